/** Longest wait for the font of the labels, in milliseconds; without it they are drawn in the next serif at hand. */
const PATIENCE_MS = 1500;

/** Fetches the font of the labels, because text on a canvas does not wait for it. */
export async function loadFonts(): Promise<void> {
  const arrived = document.fonts.load('italic 16px "Source Serif 4 Variable"').catch(() => []);
  await Promise.race([arrived, new Promise((resolve) => setTimeout(resolve, PATIENCE_MS))]);
}
