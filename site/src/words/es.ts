// Spanish, by the English that stands in the code.
export const spanish: Record<string, string> = {};
