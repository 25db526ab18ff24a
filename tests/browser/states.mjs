// Every page and state that a person can come to, one after the other on one page, for whoever looks at all of them.
const demo = async (page) => {
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	await page.waitForFunction(() => /\d/.test(document.querySelector(".total-buy dd")?.textContent ?? ""), null, { timeout: 90_000 });
};

const allOpen = async (page) => {
	await page.evaluate(() => {
		for (const details of document.querySelectorAll("details")) details.open = true;
	});
	await page.waitForTimeout(1000);
};

/** Goes to another view of the open job. */
const view = (name, part, shows) => async (page) => {
	await page.evaluate(([to, rest]) => {
		location.hash = `#/${to}/${sessionStorage.getItem("last job")}/${encodeURIComponent(rest)}`;
	}, [name, part]);
	await page.locator(shows).first().waitFor({ timeout: 60_000 });
	await page.waitForTimeout(500);
};

/** Goes to a page that is no job's. */
const place = (address, shows) => async (page) => {
	await page.evaluate((to) => {
		location.hash = to;
	}, address);
	await page.locator(shows).first().waitFor({ timeout: 60_000 });
	await page.waitForTimeout(400);
};

const press = (name) => (page) => page.getByRole("button", { name, exact: true }).first().click();

/** Goes to what a link holds to the open job, which the page itself copies. */
const sharedLink = async (page) => {
	await view("buy", "", ".quote-lines")(page);
	await page.evaluate(() => {
		navigator.clipboard.writeText = async (link) => {
			window.copied = link;
		};
	});
	await press("Copy a link to the job")(page);
	await page.waitForFunction(() => window.copied);
	await place(await page.evaluate(() => new URL(window.copied).hash), ".shared-rooms")(page);
};

/** Opens the job in a second tab, then looks at it in this one. */
const writtenElsewhere = async (page) => {
	const address = await page.evaluate(() => location.href.replace(/#.*/, `#/job/${sessionStorage.getItem("last job")}`));
	const other = await page.context().newPage();
	await other.goto(address);
	await other.locator(".band").first().waitFor({ timeout: 60_000 });
	await view("job", "", ".notice")(page);
	await page.locator(".band").first().waitFor({ timeout: 60_000 });
};

const otherTabsClosed = (reach) => async (page) => {
	for (const other of page.context().pages()) if (other !== page) await other.close();
	await reach(page);
};

export const states = {
	"first screen": async () => {},
	"a new job": async (page) => {
		await press("Start a new job")(page);
		await page.waitForSelector(".map-empty");
	},
	"a field that can't be read": async (page) => {
		await page.getByLabel("Length", { exact: true }).first().fill("four");
		await page.waitForSelector(".field-error");
	},
	"the first question": async (page) => {
		await place("#/", ".ways")(page);
		await press("Plan it step by step")(page);
		await page.waitForSelector(".step");
	},
	"a result with nothing known": view("steps", "result~0", ".step"),
	"first screen with jobs": place("#/", ".jobs li"),
	"the demo job": demo,
	"a section": async (page) => {
		await press("Cut a section")(page);
		await press("Thinnest to deepest")(page);
		await page.waitForSelector(".profile-deck");
		await page.waitForTimeout(300);
	},
	"a spot read by the cross-hair": async (page) => {
		await press("Read a spot")(page);
		await page.locator(".map-read[role=status]", { hasText: "deck reads" }).first().waitFor();
	},
	"layers of the study": async (page) => {
		await press("Tap a spot…")(page);
		for (const name of ["Finish plane", "Doubt", "Flatness", "Indicators"]) await press(name)(page);
		await page.waitForSelector("path.pin");
	},
	"the batches in time": async (page) => {
		for (const name of ["Doubt", "Flatness", "Indicators", "Finish plane", "Batches"]) await press(name)(page);
		await page.waitForSelector(".map-board .patch");
		await page.locator(".map .play-slider input").first().fill("1200");
	},
	"the demo job with everything open": async (page) => {
		await press("Batches")(page);
		await allOpen(page);
	},
	"a question with answers to tap": view("steps", "deck.kind~room-1~ply", ".answers"),
	"a question for a number": view("steps", "air.temperature~~", ".step form"),
	"the room's size": view("steps", "outline~0", ".step .picture"),
	"what stands in the room": view("steps", "keep-outs~0", ".step .picture"),
	"the doors": view("steps", "doors~0", ".step .card"),
	"the drains": view("steps", "drains~0", ".step .card"),
	"how heights are read": view("steps", "survey~0", ".method"),
	"readings spot by spot": view("steps", "readings~0", ".read-off"),
	"the leveller": view("steps", "leveller~0", ".how"),
	"the result": view("steps", "result~0", ".result-bags"),
	"the field sheet": view("sheet", "", ".paper-tables"),
	"the pour": view("pour", "", ".patch"),
	"pour day": view("day", "", ".day-main"),
	"the list to buy": view("buy", "", "main h1, main h2, main table"),
	"the floor map on paper": view("papers", "map", ".scale-map .pin"),
	"the record on paper": view("papers", "record", ".paper-record"),
	"the run sheet on paper": view("papers", "run", "[data-step=strip]"),
	"the shopping list on paper": view("papers", "list", ".quote-lines"),
	"the quote on paper": view("papers", "quote", ".quote-lines"),
	"a batch under way": async (page) => {
		await view("day", "", ".day-main")(page);
		await page.locator(".day-main").click();
		await page.getByRole("button", { name: "Start batch 2", exact: true }).waitFor();
	},
	"what is kept": view("kept", "", "#kept-earlier"),
	"a job in a link": sharedLink,
	"a job that another tab writes": writtenElsewhere,
	rulebook: otherTabsClosed(place("#/rules", ".rules a")),
	"a rule": place("#/rules/thin-over-wood", ".rule h2"),
	"no rule found": async (page) => {
		await place("#/rules", ".rules a")(page);
		await page.locator("#rules-find").fill("no such rule");
		await page.locator(".rules-entry").first().waitFor({ state: "detached" });
	},
	"the counter": place("#/counter", "[data-field='rooms/0/outline/area']"),
	"a quote": async (page) => {
		await page.locator("[data-field='rooms/0/outline/area']").fill("40");
		await page.locator("[data-field='rooms/0/rough/mean']").fill("10");
		await page.getByLabel("Deck", { exact: true }).selectOption("chipboard");
		await page.getByText(/It may take/).waitFor();
	},
	help: place("#/help", ".help-words"),
	"a job that is gone": place("#/job/none", "main p"),
};
