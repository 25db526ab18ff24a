// A rule's name as people read it.
import { said } from "./words";

export function readable(rule: string): string {
	const words = rule.replaceAll("-", " ").replaceAll("_", " ");
	return said(words.charAt(0).toUpperCase() + words.slice(1));
}
