// Times for people: seconds as 4:05 or 1:02:30, and the run sheet's local times.
import { region } from "../words/words";

/** Seconds as m:ss, or h:mm:ss from an hour on. Below zero with a minus. */
export function clock(seconds: number): string {
	const whole = Math.round(Math.abs(seconds));
	const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
	const two = (n: number) => String(n).padStart(2, "0");
	return `${seconds < -0.5 ? "−" : ""}${h > 0 ? `${h}:${two(m)}` : m}:${two(s)}`;
}

/** A run sheet's local time, which has no zone, as a date of this browser's. */
export function localDate(text: string): Date {
	return new Date(text);
}

export function dayAndTime(text: string): string {
	return localDate(text).toLocaleString(region(), {
		weekday: "short",
		day: "numeric",
		month: "short",
		hour: "2-digit",
		minute: "2-digit",
		hourCycle: "h23",
	});
}

export function timeOfDay(text: string): string {
	return localDate(text).toLocaleTimeString(region(), { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
}

/** Which day of the work a local time falls on, from 1. */
export function dayNumber(text: string, first: string): number {
	const midnight = (t: string) => new Date(`${t.slice(0, 10)}T12:00:00`).getTime();
	return Math.round((midnight(text) - midnight(first)) / 86_400_000) + 1;
}
