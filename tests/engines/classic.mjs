// A tab of WebKitGTK, driven by its own WebDriver over loopback (W3C WebDriver, https://www.w3.org/TR/webdriver2/).
import { freePort, start, until } from "./wait.mjs";

/** How an element is named in messages (W3C WebDriver, 12.1 "Elements"). */
const elementKey = "element-6066-11e4-a52e-4f735466cecf";

export async function openWebKit(address) {
	const port = await freePort();
	const driver = start("WebKitWebDriver", [`--port=${port}`, "--host=127.0.0.1"]);
	try {
		const base = `http://127.0.0.1:${port}`;
		await until("WebKitGTK's driver", () => fetch(`${base}/status`).then((answer) => answer.ok, () => false));
		const capabilities = { alwaysMatch: { timeouts: { script: 20_000 } } };
		const { sessionId } = await send("POST", `${base}/session`, { capabilities });
		const ask = (path, body) => send("POST", `${base}/session/${sessionId}/${path}`, body);
		const end = () => send("DELETE", `${base}/session/${sessionId}`).finally(() => driver.kill());
		const tab = new Tab(ask, end);
		await tab.ask("url", { url: address });
		await tab.listen();
		return tab;
	} catch (error) {
		driver.kill(); // and with it its browser
		throw error;
	}
}

async function send(method, address, body = {}) {
	const given = { method, body: method === "POST" ? JSON.stringify(body) : undefined, signal: AbortSignal.timeout(30_000) };
	const answer = await fetch(address, given).catch((error) => {
		throw new Error(`WebKitGTK did not answer ${method} ${address}`, { cause: error });
	});
	const { value } = await answer.json();
	if (!answer.ok) throw new Error(`${address}: ${value.error}: ${value.message}`);
	return value;
}

class Tab {
	heard = [];

	constructor(ask, end) {
		this.ask = ask;
		this.end = end;
	}

	async reload() {
		await this.complaints();
		await this.ask("refresh");
		await this.listen();
	}

	/** Listens for complaints from when the page is loaded: this driver can't put anything before the page's own scripts. */
	listen() {
		return this.run(() => {
			window.heard = [];
			addEventListener("securitypolicyviolation", (event) => window.heard.push(`policy: ${event.violatedDirective}`));
			addEventListener("error", (event) => window.heard.push(event.message));
			addEventListener("unhandledrejection", (event) => window.heard.push(String(event.reason)));
		});
	}

	/** What the pages so far complained of. */
	async complaints() {
		this.heard.push(...(await this.run(() => window.heard.splice(0))));
		return this.heard;
	}

	/** Runs a function in the page and gives what it, or its promise, comes to. */
	async run(work, ...given) {
		const script = `const [given, done] = arguments;
			Promise.resolve().then(() => (${work})(...given)).then((value) => done({ value }), (error) => done({ error: String(error) }));`;
		const { value, error } = await this.ask("execute/async", { script, args: [given] });
		if (error) throw new Error(error);
		return value;
	}

	async find(finder, name) {
		const script = `return (${finder})(arguments[0]);`;
		const found = await this.ask("execute/sync", { script, args: [name] });
		return found?.[elementKey];
	}

	click(element) {
		return this.ask(`element/${element}/click`);
	}

	async type(element, text) {
		await this.ask(`element/${element}/clear`);
		await this.ask(`element/${element}/value`, { text });
	}
}
