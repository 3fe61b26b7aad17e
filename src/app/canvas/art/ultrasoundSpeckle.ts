import type { UltrasoundView } from './ultrasoundView.ts';

/** The picture is a flared trapezoid: half widths at its top and bottom as parts of the whole width, and its margins. */
const TOP_HALF = 0.27;
const BOTTOM_HALF = 0.46;
const MARGIN = 0.07;
/** Layers of tissue: depth, thickness, brightness; the last two are deep muscle. */
const LAYERS = [[0.15, 0.012, 0.8], [0.2, 0.01, 0.55], [0.55, 0.012, 0.45], [0.7, 0.012, 0.5]] as const;
/** Depth between two echoes of air, and how thick each is. */
const ECHO_STEP = 0.075;
const ECHO_THICK = 0.022;

/** Even noise between 0 and 1 that is the same for the same dot, so that the picture does not flicker. */
function grain(x: number, y: number): number {
  let h = Math.imul(x + 1, 374761393) ^ Math.imul(y + 1, 668265263);
  h = Math.imul(h ^ (h >>> 13), 1274126177);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

/** Stylised ultrasound picture: noise for tissue, two dark round vessels. */
export function speckle(view: UltrasoundView, wide: number, high: number): ImageData {
  const image = new ImageData(wide, high);
  for (let j = 0; j < high; j++) {
    const depth = (j / high - MARGIN) / (1 - 2 * MARGIN);
    const half = TOP_HALF + (BOTTOM_HALF - TOP_HALF) * depth;
    for (let i = 0; i < wide; i++) {
      const across = (i / wide - 0.5) / half;
      const inside = depth > 0 && depth < 1 && Math.abs(across) < 1;
      const shadowed = inside && view.shadows.some(([from, to]) => across > from && across < to);
      const light = inside ? dotLight(view, shadowed, across * half, depth, grain(i, j), grain(j + 911, i)) : 0;
      const at = 4 * (j * wide + i);
      image.data[at] = 19 + 205 * light;
      image.data[at + 1] = 26 + 203 * light;
      image.data[at + 2] = 31 + 200 * light;
      image.data[at + 3] = 255;
    }
  }
  return image;
}

/** Under air there is no picture, only the face seen again and again, ever fainter. */
const echoes = (depth: number): number => (depth % ECHO_STEP < ECHO_THICK ? 0.55 * Math.max(0, 1 - 2.2 * depth) : 0.02);

/** Brightness of one dot, 0 to 1. `x` runs from −0.5 to 0.5 over the picture. */
function dotLight(view: UltrasoundView, shadowed: boolean, x: number, depth: number, chance: number, strength: number): number {
  const noise = shadowed ? echoes(depth) : view.contact < 0.05 ? 0.06 : brightness(view, x, depth) * (0.12 + 0.88 * view.contact);
  const band = depth < 0.06 ? 0.7 : 0;
  const bright = Math.max(noise, band * (0.3 + 0.7 * view.contact));
  return chance < bright * 0.95 ? 0.28 + 0.72 * strength * Math.min(1, bright + 0.35) : 0.03;
}

function brightness(view: UltrasoundView, x: number, depth: number): number {
  let light = 0.5 * (1 - 0.42 * depth);
  for (const [at, thick, bright] of LAYERS) {
    if (Math.abs(depth - at - 0.02 * Math.sin(x * 9 + at * 9)) < thick * 1.6) light = Math.max(light, bright);
  }
  if (depth > 0.22 && depth < 0.27) light *= 0.55;
  const vein = ((x - view.veinAcross * 0.33) / 0.1) ** 2 + ((depth - view.veinDepth) / 0.105) ** 2;
  const artery = Math.hypot((x - view.arteryAcross * 0.33) / 0.064, (depth - view.arteryDepth) / 0.078);
  if (Math.abs(x - view.veinAcross * 0.33) < 0.08 && depth > view.veinDepth + 0.11) light = Math.min(1, light * 1.6);
  if (vein < 1) light = 0.01;
  else if (vein < 1.35) light = 0.72;
  if (artery < 1) light = 0.01;
  else if (artery < 1.32) light = 0.92;
  return light;
}
