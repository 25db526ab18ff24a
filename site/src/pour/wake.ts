// What keeps a person warned on pour day: the screen kept on, a sound, a buzz. Sound and buzz can be switched off; the choice is kept.
import { signal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import { call } from "../engine/client";

export const sounds = signal(true);
export const vibration = signal(true);
let audio: AudioContext | undefined;

/** Takes over what was chosen last time. */
export function loadAlarms(): void {
	call("settings.open", {})
		.then(({ values }) => {
			sounds.value = values["day.sound"] !== "off";
			vibration.value = values["day.buzz"] !== "off";
		})
		.catch(() => undefined); // both stay on
}

async function keepAlarms(): Promise<void> {
	const { values } = await call("settings.open", {});
	const chosen = {
		...values,
		"day.sound": sounds.value ? "on" : "off",
		"day.buzz": vibration.value ? "on" : "off",
	};
	await call("settings.keep", { values: chosen });
}

export function toggleSounds(): void {
	sounds.value = !sounds.value;
	if (sounds.value) beep(1);
	void keepAlarms();
}

export function toggleVibration(): void {
	vibration.value = !vibration.value;
	if (vibration.value) navigator.vibrate?.(200);
	void keepAlarms();
}

/** Warns with so many beeps and buzzes. */
export function warn(times: number): void {
	if (sounds.value) beep(times);
	if (vibration.value) navigator.vibrate?.(Array.from({ length: 2 * times - 1 }, (_, i) => (i % 2 === 0 ? 300 : 150)));
}

function beep(times: number): void {
	audio ??= new AudioContext();
	void audio.resume();
	for (let i = 0; i < times; i++) {
		const tone = audio.createOscillator();
		const loud = audio.createGain();
		const at = audio.currentTime + i * 0.45;
		tone.frequency.value = 1400;
		loud.gain.setValueAtTime(0.4, at);
		loud.gain.exponentialRampToValueAtTime(0.001, at + 0.35);
		tone.connect(loud).connect(audio.destination);
		tone.start(at);
		tone.stop(at + 0.36);
	}
}

/** Browsers let a page sound only after it was touched: the first touch opens the way. */
addEventListener("pointerdown", () => void audio?.resume());

/** Keeps the screen on while the caller is shown; tells whether the browser does. */
export function useScreenAwake(): boolean {
	const [awake, setAwake] = useState(false);
	useEffect(() => {
		let lock: WakeLockSentinel | undefined;
		let gone = false;
		const ask = async () => {
			if (document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
			try {
				lock = await navigator.wakeLock.request("screen");
				if (gone) void lock.release();
				else setAwake(true);
				lock.addEventListener("release", () => setAwake(false));
			} catch {
				setAwake(false); // low battery, or not allowed: the page says so
			}
		};
		void ask();
		document.addEventListener("visibilitychange", ask); // the lock is lost whenever the page is hidden
		return () => {
			gone = true;
			document.removeEventListener("visibilitychange", ask);
			void lock?.release();
		};
	}, []);
	return awake;
}
