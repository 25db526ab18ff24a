// The plan in the page's own engine beside the plan native, from the job's bytes to the plan's.
import { compare, quick, ratioRow, short } from "./figures.mjs";

export async function planTimes({ routines: { native }, engine }) {
	const rows = [];
	for (const size of quick ? [200] : [200, 2000]) {
		const { input } = await native.ask({ name: "plan", size, times: 0 });
		await engine.ready({ job: input });
		const [there, here] = await compare(
			(times) => native.ask({ name: "plan", size, times }),
			(times) => engine.repeat("plan", times),
		);
		rows.push(ratioRow(`plan, ${size} readings`, `${short(here.ms)} ms`, `${short(there.ms)} ms native`, "more", here.ratio, size === 2000 ? 3 : undefined));
	}
	return rows;
}
