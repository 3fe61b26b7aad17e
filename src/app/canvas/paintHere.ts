import { loadFonts } from './fonts.ts';
import type { Painter } from './painter.ts';
import { chooseBackend, type RendererChoice } from './render/chooseBackend.ts';
import { RoomPainter } from './roomPainter.ts';

/** A painter on the page's own thread. */
export async function paintHere(choice: RendererChoice, reducedMotion: boolean): Promise<Painter> {
  const [backend] = await Promise.all([chooseBackend(choice), loadFonts(document.fonts)]);
  return new RoomPainter(backend, reducedMotion);
}
