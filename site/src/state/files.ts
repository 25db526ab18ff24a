// Files to and from the person's own disk. Nothing leaves the browser.

/** Offers a text as a file to save. */
export function save(name: string, text: string, type: string): void {
	const address = URL.createObjectURL(new Blob([text], { type }));
	const link = document.createElement("a");
	link.href = address;
	link.download = name;
	link.click();
	setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** A file name from what a person called something. */
export function fileName(called: string, ending: string): string {
	const plain = called
		.normalize("NFKD")
		.replace(/[^\w\s-]/g, "")
		.trim()
		.replace(/\s+/g, "-")
		.toLowerCase();
	return `${plain || "job"}.${ending}`;
}
