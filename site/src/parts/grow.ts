// Long lists are drawn a few at once and the rest by and by, so that a slow phone can scroll and type meanwhile.
import { useEffect, useState } from "preact/hooks";

const step = 6;

/** As much of a list as is drawn yet. */
export function useGrowing<T>(list: readonly T[]): T[] {
	const [count, setCount] = useState(step);
	const more = count < list.length;
	useEffect(() => {
		if (!more) return;
		const next = setTimeout(() => setCount(count + step));
		return () => clearTimeout(next);
	}, [count, more]);
	return list.slice(0, count);
}
