/**
 * Keeps the app on the device (built app only). `onUpdate` is called when a newer version waits; call what it is given to
 * switch to it, which reloads the page.
 */
export async function keepOffline(onUpdate: (switchOver: () => void) => void): Promise<void> {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  const workers = navigator.serviceWorker;
  // A browser that lets no worker in still runs the app while there is a network.
  const registration = await workers.register("./sw.js").catch(() => undefined);
  if (!registration) return;
  const offer = (waiting: ServiceWorker) => {
    // The first version has no older page to replace and takes over by itself.
    if (!workers.controller) return;
    onUpdate(() => {
      workers.addEventListener("controllerchange", () => location.reload(), { once: true });
      waiting.postMessage("take-over");
    });
  };
  if (registration.waiting) offer(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const next = registration.installing;
    next?.addEventListener("statechange", () => {
      if (next.state === "installed") offer(next);
    });
  });
}
