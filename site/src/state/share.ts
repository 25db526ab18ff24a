// A whole job in an address: deflated, in base64url. It is made and read in the browser; nothing is sent anywhere. The customer's name and
// number stay behind.
import type { Job } from "../engine/contract";

/** The longest address part and the longest job that are read; a job of thousands of readings stays well below. */
const mostPacked = 1 << 20;
const mostText = 8 << 20;

/** The job as it is shared. */
export function shared(job: Job): Job {
	const open = structuredClone(job);
	if (open.offer) open.offer = { ...open.offer, customer: "", number: "" };
	return open;
}

export async function pack(job: Job): Promise<string> {
	const text = new Blob([JSON.stringify(shared(job))]).stream();
	const packed = await new Response(text.pipeThrough(new CompressionStream("deflate-raw"))).arrayBuffer();
	return toBase64(new Uint8Array(packed));
}

/** The text of a packed job. Throws where it is too long or no packed job. */
export async function unpack(packed: string): Promise<string> {
	if (packed.length > mostPacked) throw new Error("too long");
	const reader = new Blob([fromBase64(packed)])
		.stream()
		.pipeThrough(new DecompressionStream("deflate-raw"))
		.getReader();
	const chunks: Uint8Array<ArrayBuffer>[] = [];
	for (let length = 0; ; ) {
		const { done, value } = await reader.read();
		if (done) return await new Blob(chunks).text();
		length += value.length;
		if (length > mostText) {
			await reader.cancel();
			throw new Error("too long");
		}
		chunks.push(new Uint8Array(value));
	}
}

function toBase64(bytes: Uint8Array): string {
	let binary = "";
	for (const byte of bytes) binary += String.fromCharCode(byte);
	return btoa(binary).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> {
	if (!/^[\w-]*$/.test(text)) throw new Error("not packed");
	const binary = atob(text.replace(/-/g, "+").replace(/_/g, "/"));
	return Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
}

/** The address that holds a job. */
export async function shareLink(job: Job): Promise<string> {
	return `${location.href.split("#")[0]}#/share/${await pack(job)}`;
}
