import type { RoomPicture, StrandPicture } from '../../../core/room/picture.ts';
import { recede } from '../art/depth.ts';
import { Cells } from '../cells.ts';
import type { Frame } from '../frame.ts';
import { lengthFactor, scaling } from '../pen/affine.ts';
import type { Point } from '../pen/curves.ts';
import type { Pen } from '../pen/pen.ts';
import { boxAround } from '../pictureCache.ts';
import { cordFilmKey, paintCord } from './cord.ts';
import { paintDrapeEdge, paintDrapeFar } from './drape.ts';
import { paintPocketFar, paintPocketNear, pocketKey } from './pocket.ts';
import { edgeAt, paintFoldOverFingers } from './pocketFolds.ts';
import { pocketPoints, pocketShape } from './pocketShape.ts';
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

/** A strand to be drawn from its kept picture. */
interface KeptStrand {
  readonly name: string;
  readonly strand: StrandPicture;
  /** What its looks depend on besides nodes and marks. */
  readonly more?: string;
  /** What it covers, and where in there it is; both in centimetres. */
  readonly outline: readonly Point[];
  readonly points: () => readonly Point[];
  readonly paint: (pen: Pen) => void;
}

function paintKept(frame: Frame, { name, strand, more = '', outline, points, paint }: KeptStrand): void {
  const cm = frame.pen.in(scaling(0.01));
  // Nodes are at most 2 cm apart: half of that is added to what a point stands for.
  const reach = MARGIN_PX * cm.density + lengthFactor(cm.map);
  frame.cache.draw(cm, name, `${strandKey(strand, frame)} ${more}`, [0, 0], boxAround(cm, outline, MARGIN_PX + 2), paint, () => new Cells(cm, points(), reach));
}

const sheetsOf = ({ picture }: Frame): StrandPicture[] => picture.strands.filter(({ id }) => id === 'drape.left' || id === 'drape.right');

export function paintDrapesFar(frame: Frame): void {
  for (const strand of sheetsOf(frame)) {
    const line = strandLine(strand);
    const points = (): Point[] => [...line, ...DEPTHS.flatMap((depth) => recede(line, depth))];
    paintKept(frame, { name: `${strand.id} far`, strand, outline: [...line, ...recede(line)], points, paint: (pen) => paintDrapeFar(pen, strand, frame.markOf) });
  }
}

export function paintDrapeEdges(frame: Frame): void {
  for (const strand of sheetsOf(frame)) {
    const line = strandLine(strand);
    paintKept(frame, { name: `${strand.id} edge`, strand, outline: line, points: () => line, paint: (pen) => paintDrapeEdge(pen, strand, frame.markOf) });
  }
}

export function paintCordKept(frame: Frame): void {
  const strand = frame.picture.strands.find(({ id }) => id === 'cord');
  if (strand === undefined) return;
  const line = strandLine(strand);
  paintKept(frame, { name: 'cord', strand, more: cordFilmKey(frame.picture), outline: line, points: () => line, paint: (pen) => paintCord(pen, strand, frame.picture, frame.markOf) });
}

/** One of the two sides of the opened sheath. */
function paintPocketSide(frame: Frame, name: 'pocket far' | 'pocket near', paint: (pen: Pen, strand: StrandPicture) => void): void {
  const strand = frame.picture.strands.find(({ id }) => id === 'pocket');
  if (strand === undefined) return;
  const points = pocketPoints(pocketShape(strand));
  paintKept(frame, { name, strand, more: pocketKey(frame.picture), outline: points, points: () => points, paint: (pen) => paint(pen, strand) });
}

export const paintPocketBehind = (frame: Frame): void => paintPocketSide(frame, 'pocket far', (pen, strand) => paintPocketFar(pen, strand, frame.picture));
export const paintPocketBefore = (frame: Frame): void => paintPocketSide(frame, 'pocket near', (pen, strand) => paintPocketNear(pen, strand, frame.picture, frame.markOf));

/** The fold of the mouth over the fingers that are under it. */
export function paintFolds({ picture, pen, markOf }: Frame): void {
  const strand = picture.strands.find(({ id }) => id === 'pocket');
  if (strand === undefined) return;
  const shape = pocketShape(strand);
  for (const side of picture.fingersInFold) {
    const hand = picture.hands[side];
    paintFoldOverFingers(pen.in(scaling(0.01)), shape, hand, markOf(strand.surfaces.at(edgeAt(shape.line, hand) === 0 ? 0 : -1)));
  }
}
