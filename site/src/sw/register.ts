// The page's side of the service worker: registers it, tells when a new build waits, and switches over when asked to.

/** Registers the service worker. offer is called when a new build is ready; it gets what switches to it (the page reloads). */
export async function registerServiceWorker(offer: (switchOver: () => void) => void): Promise<void> {
	if (!("serviceWorker" in navigator)) return;
	const registration = await navigator.serviceWorker.register("sw.js", { updateViaCache: "none" });
	// A build waits where another is active. The first one of all is told as waiting too, for the moment before it becomes active.
	const look = () => {
		const { active, waiting } = registration;
		if (active && waiting) offer(() => switchTo(waiting));
	};
	look();
	registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", look));
}

function switchTo(waiting: ServiceWorker): void {
	navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
	waiting.postMessage("take over");
}
