import type { RoomPicture, StrandPicture } from '../../../core/room/picture.ts';
import type { MarkOf } from '../art/marks.ts';
import { CORD_FROM_FACE_M, PROBE_ENDS_M } from '../items/probeOutline.ts';
import { BAND, BAND_LINE, BREAK, BREAK_TINT, CORD, CORD_LINE, FILM, FILM_LINE, HATCH } from '../palette.ts';
import type { Affine } from '../pen/affine.ts';
import { thrifty, type Point } from '../pen/curves.ts';
import { MOVE, QUADRATIC, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { alongLine, cutLine, lengthOf, type Along } from './along.ts';
import { bunchLength, paintFilmBunch } from './filmBunch.ts';
import { runsOf, type Run } from './runs.ts';
import { strandLine } from './strandLine.ts';

/** The film that lies over a cord. */
interface CordFilm {
  /** Stretches of the cord under it, from the probe; the last one may be covered in part. */
  readonly covered: number;
  readonly foldedM: number;
  /** Bands beyond the probe: centimetres from the beginning of the cord. */
  readonly bands: readonly number[];
}

/** What of the film lies over the cord; while the sheath is a pocket that is open, none does. */
function filmOf({ coveredM, foldedM, scenario, strands, items }: RoomPicture, stretches: number): CordFilm {
  const open = strands.some(({ id }) => id === 'pocket');
  const bands = items.flatMap(({ dress }) => dress?.bands ?? []).filter((at) => at > PROBE_ENDS_M);
  return { covered: open ? 0 : Math.min(stretches, Math.round((coveredM / scenario.cord.linkM) * 1e6) / 1e6), foldedM: open ? 0 : foldedM, bands: bands.map((at) => (at - CORD_FROM_FACE_M) * 100) };
}

/** What the looks of the film over the cord depend on besides its line and marks. */
export function cordFilmKey(picture: RoomPicture): string {
  const { covered, foldedM, bands } = filmOf(picture, Infinity);
  return `${covered.toFixed(2)} ${foldedM.toFixed(3)} ${bands.map((cm) => cm.toFixed(1)).join()}`;
}

/** The bare cord is dark, the sheathed one shows through its film; the pen's frame is in centimetres. */
export function paintCord(cm: Pen, strand: StrandPicture, picture: RoomPicture, markOf: MarkOf): void {
  const line = strandLine(strand);
  const film = filmOf(picture, line.length - 1);
  const [under, beyond] = cutLine(line, film.covered);
  const runs = runsOf(strand.surfaces, markOf);
  paintBare(cm, line, beyond);
  for (const run of clipRuns(runs, Math.ceil(film.covered), line.length - 1)) markBare(cm, line, run);
  if (film.covered <= 0) return;
  paintFilm(cm, line, under, film);
  for (const run of clipRuns(runs, 0, Math.floor(film.covered))) markFilm(cm, line, run);
}

/** A light streak makes the cord round where no film covers it. */
function paintBare(cm: Pen, line: readonly Point[], beyond: readonly Point[]): void {
  const { cord } = cm.weights;
  const path = thrifty(line);
  cm.path(path, { line: CORD_LINE, weight: cord + 1.6 });
  cm.path(path, { line: CORD, weight: cord });
  if (beyond.length > 1) cm.path(thrifty(beyond), { line: '#8A969E', weight: cord * 0.22 });
}

function paintFilm(cm: Pen, line: readonly Point[], under: readonly Point[], { foldedM, bands }: CordFilm): void {
  const { film } = cm.weights;
  const half = (film * cm.density) / 2 / pxPerCm(cm.map);
  const path = thrifty(under);
  cm.path(path, { line: FILM_LINE, weight: film + 2.2, alpha: 0.95, butt: true });
  cm.path(path, { line: FILM, weight: film, alpha: 0.85, butt: true });
  cm.path(wrinkles(under, half), { line: FILM_LINE, weight: 'h', alpha: 0.75 });
  for (const far of bands) paintCordBand(cm, alongLine(line, far), half);
  const end = lengthOf(under);
  const bunch = bunchLength(foldedM);
  const from = Math.max(0, end - bunch);
  if (bunch > 0) paintFilmBunch(cm, line, { from, to: from + bunch, half, foldedM });
  if (under.length > 3) paintMouth(cm, under.at(-1)!, under.at(-3)!, half * 1.3);
}

/** A band wound round the film on the cord. `half` is that of the film, in centimetres. */
function paintCordBand(cm: Pen, { at, t }: Along, half: number): void {
  cm.in([t[0], t[1], -t[1], t[0], at[0], at[1]]).box(-0.22, -half * 1.15, 0.22, half * 1.15, { fill: BAND, line: BAND_LINE, weight: 'd' }, 0.12);
}

const pxPerCm = (map: Affine): number => Math.hypot(map[0], map[1]);

/** Short curved lines across the film, on alternate sides, as one path. */
function wrinkles(line: readonly Point[], half: number): PathData {
  const path: PathData = { ops: [], xy: [] };
  for (let i = 1; i + 1 < line.length; i++) {
    const [[ax, ay], [x, y], [bx, by]] = [line[i - 1]!, line[i]!, line[i + 1]!];
    const length = Math.hypot(bx - ax, by - ay) || 1;
    const side = i % 2 === 0 ? 1 : -1;
    const h = half * (i % 4 < 2 ? 0.9 : 0.66);
    const [nx, ny] = [(-(by - ay) / length) * side, ((bx - ax) / length) * side];
    const [tx, ty] = [(bx - ax) / length, (by - ay) / length];
    path.ops.push(MOVE, QUADRATIC);
    path.xy.push(x + nx * h, y + ny * h, x + nx * h * 0.1 + tx * h * 0.9, y + ny * h * 0.1 + ty * h * 0.9, x - nx * h * 0.25 + tx * h * 0.2, y - ny * h * 0.25 + ty * h * 0.2);
  }
  return path;
}

/** The open end of the sheath, a little flared. `r` in centimetres. */
function paintMouth(cm: Pen, end: Point, before: Point, r: number): void {
  const angle = Math.atan2(end[1] - before[1], end[0] - before[0]);
  const frame: Affine = [Math.cos(angle) * r, Math.sin(angle) * r, -Math.sin(angle) * r, Math.cos(angle) * r, end[0], end[1]];
  cm.in(frame).path('M-1.6 .86C-.6 1.1 .3 1.5 .8 1.35C.4 .5 .4 -.5 .8 -1.35C.3 -1.5 -.6 -1.1 -1.6 -.86Z', { fill: FILM, fillAlpha: 0.85, line: FILM_LINE, weight: 'd' });
}

function clipRuns(runs: readonly Run[], from: number, to: number): Run[] {
  return runs.map((run) => ({ ...run, from: Math.max(run.from, from), to: Math.min(run.to, to) })).filter((run) => run.mark !== 'sterile' && run.from < run.to);
}

function markBare(cm: Pen, line: readonly Point[], { mark, from, to }: Run): void {
  const stretch = thrifty(line.slice(from, to + 1));
  const { cord } = cm.weights;
  if (mark === 'unsterile') cm.path(stretch, { line: '#E9EEF0', weight: cord + 0.2, dash: [1.6, 4.4], butt: true });
  else cm.path(stretch, { line: BREAK_TINT, weight: cord + 0.2, dash: [3, 4], butt: true });
}

function markFilm(cm: Pen, line: readonly Point[], { mark, from, to }: Run): void {
  const stretch = thrifty(line.slice(from, to + 1));
  const { film } = cm.weights;
  if (mark === 'unsterile') { cm.path(stretch, { line: HATCH, weight: film, dash: [1, 4], butt: true, alpha: 0.8 }); return; }
  cm.path(stretch, { line: BREAK, weight: film + 3, butt: true });
  cm.path(stretch, { line: BREAK_TINT, weight: film - 1.5, dash: [3, 3.4], butt: true });
}
