import type { RoomPicture, StrandPicture } from '../../../core/room/picture.ts';
import { recede } from '../art/depth.ts';
import { Cells } from '../cells.ts';
import type { Frame } from '../frame.ts';
import { lengthFactor, scaling } from '../pen/affine.ts';
import type { Point } from '../pen/curves.ts';
import type { Pen } from '../pen/pen.ts';
import { boxAround } from '../pictureCache.ts';
import { paintCord } from './cord.ts';
import { paintDrapeEdge, paintDrapeFar } from './drape.ts';
import { runsOf } from './runs.ts';
import { strandLine } from './strandLine.ts';

/** Movements below this part of a pixel are not seen. */
const STEPS_PER_PX = 4;
/** Half the width of the widest strand line, in CSS pixels. */
const MARGIN_PX = 12;
/** Depths at which a sheet is looked at to find the cells that it covers. */
const DEPTHS = [0.25, 0.5, 0.75, 1].map((part) => 1 - part * (1 - 0.932));

const keys = new WeakMap<StrandPicture, { readonly frame: string; readonly marks: RoomPicture['marks']; readonly key: string }>();

/** Everything that the looks of a strand depend on; found once a frame. */
export function strandKey(strand: StrandPicture, { camera, pen, markOf, shown, picture }: Frame): string {
  const frame = `${camera.toScreen.join()} ${pen.density} ${shown}`;
  const known = keys.get(strand);
  if (known?.frame === frame && known.marks === picture.marks) return known.key;
  const scale = camera.pxPerM * pen.density * STEPS_PER_PX;
  let nodes = '';
  strand.x.forEach((x, i) => { nodes += `${Math.round(x * scale)},${Math.round(strand.y[i]! * scale)} `; });
  const marks = runsOf(strand.surfaces, markOf).map(({ mark, to }) => `${mark}${to}`).join();
  const key = `${frame} ${nodes} ${marks}`;
  keys.set(strand, { frame, marks: picture.marks, key });
  return key;
}

/** Draws a strand from its kept picture. `outline` is what it covers, `points` where in there it is; both in centimetres. */
function paintKept(frame: Frame, cm: Pen, name: string, strand: StrandPicture, outline: readonly Point[], points: () => readonly Point[], paint: (pen: Pen) => void): void {
  // Nodes are at most 2 cm apart: half of that is added to what a point stands for.
  const reach = MARGIN_PX * cm.density + lengthFactor(cm.map);
  frame.cache.draw(cm, name, strandKey(strand, frame), [0, 0], boxAround(cm, outline, MARGIN_PX + 2), paint, () => new Cells(cm, points(), reach));
}

export function paintDrapesFar(frame: Frame): void {
  const cm = frame.pen.in(scaling(0.01));
  for (const strand of frame.picture.strands) {
    if (strand.id === 'cord') continue;
    const line = strandLine(strand);
    const points = (): Point[] => [...line, ...DEPTHS.flatMap((depth) => recede(line, depth))];
    paintKept(frame, cm, `${strand.id} far`, strand, [...line, ...recede(line)], points, (pen) => paintDrapeFar(pen, strand, frame.markOf));
  }
}

export function paintDrapeEdges(frame: Frame): void {
  const cm = frame.pen.in(scaling(0.01));
  for (const strand of frame.picture.strands) {
    if (strand.id === 'cord') continue;
    const line = strandLine(strand);
    paintKept(frame, cm, `${strand.id} edge`, strand, line, () => line, (pen) => paintDrapeEdge(pen, strand, frame.markOf));
  }
}

export function paintCordKept(frame: Frame): void {
  const strand = frame.picture.strands.find(({ id }) => id === 'cord');
  if (strand === undefined) return;
  const line = strandLine(strand);
  paintKept(frame, frame.pen.in(scaling(0.01)), 'cord', strand, line, () => line, (pen) => paintCord(pen, strand, frame.picture, frame.markOf));
}
