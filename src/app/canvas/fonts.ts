/** Longest wait for the font of the labels, in milliseconds; without it they are drawn in the next serif at hand. */
const PATIENCE_MS = 1500;
/** Family of the labels' font. */
export const LABEL_FAMILY = 'Source Serif 4 Variable';

/** Fetches the font of the labels, because text on a canvas does not wait for it. */
export async function loadFonts(fonts: FontFaceSet): Promise<void> {
  const arrived = fonts.load(`italic 16px "${LABEL_FAMILY}"`).catch(() => []);
  await Promise.race([arrived, new Promise((resolve) => setTimeout(resolve, PATIENCE_MS))]);
}
