// Bags as a study tells them: with one decimal, as they are reckoned; whole ones are for buying.
import { number } from "../words/words";

export function reckoned(bags: number): string {
	return number(bags, 1);
}

/** A difference in bags, with its sign. */
export function signed(bags: number): string {
	const text = number(Math.abs(bags), 1);
	return text === "0.0" ? "0" : `${bags < 0 ? "−" : "+"}${text}`;
}
