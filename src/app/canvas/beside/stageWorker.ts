import labelFont from '@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-italic.woff2?url';
import { DOMAdapter } from 'pixi.js';
import type { RoomPicture } from '../../../core/room/picture.ts';
import { LABEL_FAMILY, loadFonts } from '../fonts.ts';
import { makeCanvas } from '../makeCanvas.ts';
import { createBackend } from '../render/canvasBackend.ts';
import { RoomPainter } from '../roomPainter.ts';
import { withNews } from './news.ts';
import type { StageReply, StageRequest, StartMessage } from './messages.ts';

const { fonts } = globalThis as unknown as { readonly fonts: FontFaceSet };
const reply = (message: StageReply): void => postMessage(message);
const fail = (error: unknown): void => reply({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
fonts.add(new FontFace(LABEL_FAMILY, `url("${labelFont}")`, { style: 'italic', weight: '200 900' }));
const fontsLoaded = loadFonts(fonts);
let painter: RoomPainter | null = null;
let previous: RoomPicture | null = null;
let current: RoomPicture | null = null;

/** Paints the room beside the page, which stays responsive. */
addEventListener('message', ({ data }: MessageEvent<StageRequest>) => {
  if (data.kind === 'start') {
    start(data).then(() => reply({ kind: 'ready' }), fail);
    return;
  }
  try {
    if (data.pictures) {
      previous = withNews(current, data.pictures.previous) as RoomPicture;
      current = withNews(previous, data.pictures.current) as RoomPicture;
    }
    if (previous && current) painter?.paint({ ...data.shot, previous, current });
    reply({ kind: 'painted' });
  } catch (error) {
    fail(error);
  }
});

async function start({ canvas, reducedMotion }: StartMessage): Promise<void> {
  DOMAdapter.set({ ...DOMAdapter.get(), createCanvas: makeCanvas, getCanvasRenderingContext2D: () => OffscreenCanvasRenderingContext2D });
  const [backend] = await Promise.all([createBackend(canvas), fontsLoaded]);
  painter = new RoomPainter(backend, reducedMotion);
}
