/** Longest wait for an idle moment, in milliseconds. */
const PATIENCE_MS = 1500;
/** Wait where the browser cannot tell that it is idle. */
const UNTOLD_MS = 400;

/** Does something once the page has nothing better to do. Gives back what calls it off. */
export function whenIdle(task: () => void): () => void {
  if (typeof requestIdleCallback === 'function') {
    const handle = requestIdleCallback(task, { timeout: PATIENCE_MS });
    return () => cancelIdleCallback(handle);
  }
  const timer = setTimeout(task, UNTOLD_MS);
  return () => clearTimeout(timer);
}
