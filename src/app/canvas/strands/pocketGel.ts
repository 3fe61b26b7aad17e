import { polygon, smooth, thrifty, type Point } from '../pen/curves.ts';
import type { Pen } from '../pen/pen.ts';
import { down } from '../pen/shade.ts';

/** How far the walls stand apart towards the viewer where gel lies between them (cm). */
const DEEP_CM = 1.2;
const HALVINGS = 24;

/** The part of a closed outline that lies below a height. */
function below(outline: readonly Point[], level: number): Point[] {
  return outline.flatMap(([x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length]!;
    const kept: Point[] = y <= level ? [[x, y]] : [];
    if ((y <= level) !== (ny <= level)) kept.push([x + ((nx - x) * (level - y)) / (ny - y), level]);
    return kept;
  });
}

/** Area of a closed outline, in square centimetres: the shoelace formula. */
const areaOf = (outline: readonly Point[]): number =>
  Math.abs(outline.reduce((sum, [x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length]!;
    return sum + x * ny - nx * y;
  }, 0)) / 2;

/** Height up to which so much gel fills an outline (cm); it parts the walls by `DEEP_CM`. */
export function gelLevel(outline: readonly Point[], ml: number): number {
  let low = Math.min(...outline.map(([, y]) => y));
  let high = Math.max(...outline.map(([, y]) => y));
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (areaOf(below(outline, middle)) * DEEP_CM < ml) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Gel in the closed end. The pen's frame is in centimetres. */
export function paintPocketGel(cm: Pen, outline: readonly Point[], ml: number): void {
  if (ml <= 0) return;
  const level = gelLevel(outline, ml);
  const body = below(outline, level);
  if (body.length < 3) return;
  cm.path(polygon(body), { fill: down('#B4D8EC', '#7FB3D6'), fillAlpha: 0.92 });
  const top = body.filter(([, y]) => Math.abs(y - level) < 1e-6).map(([x]) => x);
  const [from, to] = [Math.min(...top), Math.max(...top)];
  if (!(to > from)) return;
  const dip = Math.min(0.35, (to - from) * 0.12);
  const middle = (from + to) / 2;
  cm.path(smooth([[from, level], [middle, level + dip], [to, level], [middle, level - dip]], true), { fill: '#DDEFF8', fillAlpha: 0.9, line: '#5B8FAE', weight: 'd' });
  cm.path(thrifty([[from + (to - from) * 0.2, level - dip * 2.6], [from + (to - from) * 0.3, level - dip * 4]]), { line: '#FFFFFF', weight: 'd', alpha: 0.9 });
}
