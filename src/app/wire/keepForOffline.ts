/** Keeps the built page for use without a network. In development there is no service worker to register. */
export function keepForOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  navigator.serviceWorker.register('./sw.js').catch(() => undefined);
}
