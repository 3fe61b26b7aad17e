import { LABEL_FAMILY } from '../fonts.ts';
import { makeCanvas } from '../makeCanvas.ts';
import { INK, QUIET_INK, WALL } from '../palette.ts';

const LABEL_FONT = `"${LABEL_FAMILY}", Georgia, serif`;
const PAD_PX = 5;

export interface LabelArt {
  readonly canvas: HTMLCanvasElement;
  /** Size in CSS pixels. */
  readonly wide: number;
  readonly high: number;
}

/** Words in italic serif with a halo in the colour of the wall, drawn once. */
export function drawLabel(words: string, sizePx: number, density: number, quiet: boolean): LabelArt {
  const canvas = makeCanvas();
  const ctx = canvas.getContext('2d')!;
  const font = `italic ${sizePx}px ${LABEL_FONT}`;
  ctx.font = font;
  const wide = Math.ceil(ctx.measureText(words).width) + 2 * PAD_PX;
  const high = Math.ceil(sizePx * 1.35) + 2;
  canvas.width = wide * density;
  canvas.height = high * density;
  ctx.scale(density, density);
  ctx.font = font;
  ctx.textBaseline = 'middle';
  ctx.lineJoin = 'round';
  ctx.lineWidth = 4;
  ctx.strokeStyle = WALL;
  ctx.strokeText(words, PAD_PX, high / 2);
  ctx.fillStyle = quiet ? QUIET_INK : INK;
  ctx.fillText(words, PAD_PX, high / 2);
  return { canvas, wide, high };
}
