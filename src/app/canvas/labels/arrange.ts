import { SIDES } from '../../../core/base/side.ts';
import type { Frame } from '../frame.ts';
import type { LabelPlace, Offset } from './places.ts';

/** Part of the screen in CSS pixels. */
export interface Box { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number }

/** A label that found room. CSS pixels of the host. */
export interface PlacedLabel {
  readonly words: string;
  /** Left upper corner of the words. */
  readonly x: number;
  readonly y: number;
  /** End of the leader at the words. */
  readonly tieX: number;
  readonly tieY: number;
  readonly offset: Offset;
}

export interface Surroundings {
  readonly frame: Pick<Frame, 'camera' | 'picture' | 'pen'>;
  readonly measure: (words: string) => { readonly wide: number; readonly high: number };
  /** What is occupied besides hands and strands. */
  readonly taken: readonly Box[];
}

/** A label keeps its place while its words are this near to it, so that names do not jump, in CSS pixels. */
const KEEP_PX = 60;
/** Words keep clear of the edges of the screen, and of the top of it, where legend and buttons lie over the room (CSS pixels). */
const EDGE_PX = 4;
const TOP_PX = 54;
const HAND_HALF_M = 0.1;
const PROBE_HALF_M = 0.07;
/** Every how many nodes a strand keeps words away, and how far. */
const STRAND_STEP = 2;
const STRAND_HALF_PX = 7;

/** Puts the labels beside their points so that no two overlap, none covers a hand and all lie on the screen; others are left out. */
export function arrange(places: readonly LabelPlace[], before: readonly PlacedLabel[], around: Surroundings): PlacedLabel[] {
  const taken: Box[] = [...around.taken, ...handBoxes(around), ...strandBoxes(around), ...loadingBoxes(around), ...solidBoxes(around)];
  const placed: PlacedLabel[] = [];
  for (const place of places) {
    const old = before.find(({ words }) => words === place.words);
    const label = find(place, old, taken, around);
    if (label === null) continue;
    const { wide, high } = around.measure(place.words);
    taken.push({ x0: label.x, y0: label.y, x1: label.x + wide, y1: label.y + high });
    placed.push(label);
  }
  return placed;
}

function find(place: LabelPlace, old: PlacedLabel | undefined, taken: readonly Box[], { frame: { camera }, measure }: Surroundings): PlacedLabel | null {
  const point = camera.roomToScreen(place.x, place.y);
  if (point.x < EDGE_PX || point.y < EDGE_PX || point.x > camera.widthPx - EDGE_PX || point.y > camera.heightPx - EDGE_PX) return null;
  const size = measure(place.words);
  const fits = (label: PlacedLabel): boolean => {
    const box = { x0: label.x, y0: label.y, x1: label.x + size.wide, y1: label.y + size.high };
    const onScreen = box.x0 > EDGE_PX && box.y0 > TOP_PX && box.x1 < camera.widthPx - EDGE_PX && box.y1 < camera.heightPx - EDGE_PX;
    return onScreen && !taken.some((other) => box.x0 < other.x1 && other.x0 < box.x1 && box.y0 < other.y1 && other.y0 < box.y1);
  };
  const fresh = place.offsets.map((offset) => at(place.words, point, offset, size));
  if (old !== undefined && fits(old)) {
    const same = at(place.words, point, old.offset, size);
    if (Math.hypot(same.x - old.x, same.y - old.y) < KEEP_PX) return old;
  }
  return fresh.find(fits) ?? null;
}

function at(words: string, point: { x: number; y: number }, offset: Offset, { wide, high }: { wide: number; high: number }): PlacedLabel {
  const [dx, dy, align] = offset;
  const tieX = point.x + dx;
  const tieY = point.y + dy;
  const x = align === 'left' ? tieX : align === 'right' ? tieX - wide : tieX - wide / 2;
  return { words, offset, x, y: align === 'centre' ? (dy < 0 ? tieY - high : tieY) : tieY - high / 2, tieX, tieY };
}

function handBoxes({ frame: { camera, picture } }: Surroundings): Box[] {
  return SIDES.map((side) => {
    const { x, y } = picture.hands[side];
    const a = camera.roomToScreen(x - HAND_HALF_M, y + HAND_HALF_M * 0.7);
    const b = camera.roomToScreen(x + HAND_HALF_M, y - HAND_HALF_M * 0.7);
    return { x0: a.x, y0: a.y, x1: b.x, y1: b.y };
  });
}

/** Words do not lie on a cord or on the edge of a sheet. */
function strandBoxes({ frame: { camera, picture } }: Surroundings): Box[] {
  return picture.strands.flatMap((strand) => Array.from(strand.x.filter((_, i) => i % STRAND_STEP === 0), (x, k): Box => {
    const at = camera.roomToScreen(x, strand.y[k * STRAND_STEP]!);
    return { x0: at.x - STRAND_HALF_PX, y0: at.y - STRAND_HALF_PX, x1: at.x + STRAND_HALF_PX, y1: at.y + STRAND_HALF_PX };
  }));
}

/** Nor on the opened sheath, where the probe is to be seen, or on a probe that hangs free. */
function loadingBoxes({ frame: { camera, picture } }: Surroundings): Box[] {
  const around = (xs: readonly number[], ys: readonly number[]): Box => {
    const a = camera.roomToScreen(Math.min(...xs), Math.max(...ys));
    const b = camera.roomToScreen(Math.max(...xs), Math.min(...ys));
    return { x0: a.x, y0: a.y, x1: b.x, y1: b.y };
  };
  const pocket = picture.strands.filter(({ id }) => id === 'pocket').map(({ x, y }) => around([...x], [...y]));
  const probe = picture.items.filter(({ kind, dress, heldBy }) => kind === 'probe' && dress === null && heldBy === null);
  return [...pocket, ...probe.map(({ x, y }) => around([x - PROBE_HALF_M, x + PROBE_HALF_M], [y - PROBE_HALF_M, y + PROBE_HALF_M]))];
}

/** Nor on the screen of the machine or on the two faces. */
function solidBoxes({ frame: { camera, picture } }: Surroundings): Box[] {
  const { room, operator } = picture.scenario;
  const box = (x: number, y: number, halfWidth: number, halfHeight: number): Box => {
    const a = camera.roomToScreen(x - halfWidth, y + halfHeight);
    const b = camera.roomToScreen(x + halfWidth, y - halfHeight);
    return { x0: a.x, y0: a.y, x1: b.x, y1: b.y };
  };
  const { torsoX, stoop } = picture.assistant;
  return [box(room.machine.xM, 1.22, 0.23, 0.2), box(picture.torsoX, operator.faceM, 0.09, 0.13), box(torsoX, 1.59 - stoop, 0.09, 0.13)];
}
