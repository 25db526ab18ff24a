/** Inches and pounds where the browser's region uses them. */
export function usualUnits(): "metric" | "us" {
	return /-(US|LR|MM)\b/i.test(navigator.language) ? "us" : "metric";
}
