import { recede } from '../art/depth.ts';
import type { Frame } from '../frame.ts';
import { scaling } from '../pen/affine.ts';
import { boxAround } from '../pictureCache.ts';
import type { StrandPicture } from '../../../core/room/picture.ts';
import { paintCord } from './cord.ts';
import { paintDrapeEdge, paintDrapeFar } from './drape.ts';
import { runsOf } from './runs.ts';
import { strandLine } from './strandLine.ts';

/** Movements below this part of a pixel are not seen. */
const STEPS_PER_PX = 4;
const MARGIN_PX = 16;

/** Everything that the looks of a strand depend on. */
function keyOf(strand: StrandPicture, { camera, pen, markOf }: Frame): string {
  const scale = camera.pxPerM * pen.density * STEPS_PER_PX;
  const [, , , , e, f] = camera.toScreen;
  const nodes = Array.from(strand.x, (x, i) => `${Math.round(x * scale)},${Math.round(strand.y[i]! * scale)}`).join(' ');
  const marks = runsOf(strand.surfaces, markOf).map(({ mark, to }) => `${mark}${to}`).join();
  return `${nodes} ${marks} ${camera.pxPerM} ${Math.round(e * STEPS_PER_PX)} ${Math.round(f * STEPS_PER_PX)}`;
}

export function paintDrapesFar(frame: Frame): void {
  const cm = frame.pen.in(scaling(0.01));
  for (const strand of frame.picture.strands) {
    if (strand.id === 'cord') continue;
    const line = strandLine(strand);
    frame.cache.draw(cm, `${strand.id} far`, keyOf(strand, frame), [0, 0], boxAround(cm, [...line, ...recede(line)], MARGIN_PX),
      (pen) => paintDrapeFar(pen, strand, frame.markOf));
  }
}

export function paintDrapeEdges(frame: Frame): void {
  const cm = frame.pen.in(scaling(0.01));
  for (const strand of frame.picture.strands) {
    if (strand.id === 'cord') continue;
    frame.cache.draw(cm, `${strand.id} edge`, keyOf(strand, frame), [0, 0], boxAround(cm, strandLine(strand), MARGIN_PX),
      (pen) => paintDrapeEdge(pen, strand, frame.markOf));
  }
}

export function paintCordKept(frame: Frame): void {
  const strand = frame.picture.strands.find(({ id }) => id === 'cord');
  if (strand === undefined) return;
  const cm = frame.pen.in(scaling(0.01));
  frame.cache.draw(cm, 'cord', keyOf(strand, frame), [0, 0], boxAround(cm, strandLine(strand), MARGIN_PX),
    (pen) => paintCord(pen, strand, frame.picture, frame.markOf));
}
