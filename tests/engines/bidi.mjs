// A tab of Firefox, driven over loopback by WebDriver BiDi (https://www.w3.org/TR/webdriver-bidi/), which it speaks without a driver between.
import { folder } from "../browser/harness.mjs";
import { freePort, start, until, within } from "./wait.mjs";

export async function openFirefox(address) {
	const port = await freePort();
	const home = folder("firefox");
	const given = ["--headless", "--no-remote", "--profile", home, "--remote-debugging-port", String(port)];
	// As root, Firefox starts only where the home folder is root's too.
	const browser = start("firefox-esr", given, { env: { ...process.env, HOME: home } });
	const ended = new Promise((resolve) => browser.on("exit", resolve));
	const kill = () => {
		browser.kill("SIGKILL");
		return ended;
	};
	try {
		const connection = await until("Firefox", () => connect(`ws://127.0.0.1:${port}/session`));
		const close = () => connection.ask("browser.close", {}).then(() => within("Firefox to close", ended)).finally(kill);
		return await openTab(connection, address, close);
	} catch (error) {
		await kill();
		throw error;
	}
}

async function openTab(connection, address, end) {
	await connection.ask("session.new", { capabilities: {} });
	await connection.ask("session.subscribe", { events: ["log.entryAdded"] });
	const { contexts } = await connection.ask("browsingContext.getTree", {});
	await connection.ask("script.addPreloadScript", { functionDeclaration: String(reportPolicy) });
	const tab = new Tab(connection, contexts[0].context, end);
	await tab.ask("browsingContext.navigate", { url: address, wait: "complete" });
	return tab;
}

function reportPolicy() {
	addEventListener("securitypolicyviolation", (event) =>
		console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`),
	);
}

/** Connects to a browser that may not listen yet; false if it doesn't. */
function connect(address) {
	return new Promise((resolve) => {
		const socket = new WebSocket(address);
		socket.onerror = () => resolve(false);
		socket.onopen = () => resolve(new Connection(socket));
	});
}

/** Numbers commands and matches their results; keeps what the page complains of. */
class Connection {
	complaints = [];
	waiting = new Map();
	count = 0;

	constructor(socket) {
		this.socket = socket;
		socket.onmessage = ({ data }) => this.hear(JSON.parse(data));
	}

	hear(message) {
		if (message.method === "log.entryAdded" && message.params.level === "error")
			this.complaints.push(message.params.text);
		this.waiting.get(message.id)?.(message);
	}

	async ask(method, params) {
		const id = ++this.count;
		const answered = new Promise((resolve) => this.waiting.set(id, resolve));
		this.socket.send(JSON.stringify({ id, method, params }));
		const { type, result, error, message } = await within(`Firefox to answer ${method}`, answered);
		if (type === "error") throw new Error(`${method}: ${error}: ${message}`);
		return result;
	}
}

class Tab {
	constructor(connection, context, end) {
		this.connection = connection;
		this.context = context;
		this.end = end;
	}

	/** What the pages so far complained of. */
	complaints() {
		return this.connection.complaints;
	}

	ask(method, params) {
		return this.connection.ask(method, { context: this.context, ...params });
	}

	reload() {
		return this.ask("browsingContext.reload", { wait: "complete" });
	}

	/** Runs a function in the page and gives what it, or its promise, comes to. */
	async run(work, ...given) {
		const text = await this.call(`async (given) => JSON.stringify(await (${work})(...JSON.parse(given)) ?? null)`, JSON.stringify(given));
		return JSON.parse(text.value);
	}

	async find(finder, name) {
		return (await this.call(String(finder), name)).sharedId;
	}

	async call(functionDeclaration, given) {
		const { result, exceptionDetails } = await this.connection.ask("script.callFunction", {
			functionDeclaration,
			arguments: [{ type: "string", value: given }],
			target: { context: this.context },
			awaitPromise: true,
		});
		if (exceptionDetails) throw new Error(exceptionDetails.text);
		return result;
	}

	click(element) {
		const origin = { type: "element", element: { sharedId: element } };
		const actions = [{ type: "pointerMove", x: 0, y: 0, origin }, press("pointer", { button: 0 }), release("pointer", { button: 0 })];
		return this.ask("input.performActions", { actions: [{ type: "pointer", id: "mouse", actions }] });
	}

	/** Types over what stands in a field. */
	async type(element, text) {
		await this.click(element);
		await this.run(() => document.activeElement.select());
		const actions = [...text].flatMap((value) => [press("key", { value }), release("key", { value })]);
		await this.ask("input.performActions", { actions: [{ type: "key", id: "keyboard", actions }] });
	}
}

const press = (device, what) => ({ type: `${device}Down`, ...what });
const release = (device, what) => ({ type: `${device}Up`, ...what });
