import { SIDES } from '../../core/base/side.ts';
import { paintAssistant } from './art/assistant.ts';
import { paintBed, paintRail } from './art/bed.ts';
import { paintBin } from './art/bin.ts';
import { paintKitTable } from './art/kitTable.ts';
import { paintLevel } from './art/level.ts';
import { paintMachine, paintOutlet } from './art/machine.ts';
import { paintNeckband, paintOperatorBody } from './art/operatorBody.ts';
import { paintPatient } from './art/patient.ts';
import { paintPole } from './art/pole.ts';
import { paintSkinSurface } from './art/skinSurface.ts';
import { paintWall } from './art/wall.ts';
import type { LayerName } from './drawingOrder.ts';
import type { Frame } from './frame.ts';
import { paintHandWithThing, paintSleeves } from './hand/paintArms.ts';
import { paintItem } from './items/paintItem.ts';
import { scaling, shift } from './pen/affine.ts';
import { paintCord } from './strands/cord.ts';
import { paintDrapeEdge, paintDrapeFar } from './strands/drape.ts';

const drapesOf = ({ picture }: Frame) => picture.strands.filter(({ id }) => id !== 'cord');

/** How each layer is drawn. */
export const LAYER_PAINTERS: Readonly<Record<LayerName, (frame: Frame) => void>> = {
  wall: ({ pen }) => paintWall(pen),
  pole: ({ pen, picture, markOf }) => paintPole(pen, picture, markOf),
  kitTable: ({ pen, picture, markOf }) => paintKitTable(pen, picture, markOf),
  bin: ({ pen, picture, markOf }) => paintBin(pen, picture, markOf),
  machine: ({ pen, picture, markOf }) => paintMachine(pen, picture, markOf),
  assistant: ({ pen, picture, shown }) => paintAssistant(pen, picture, shown),
  operatorBody: ({ pen, picture, markOf, shown }) => paintOperatorBody(pen, picture, markOf, shown),
  bed: ({ pen, picture, markOf }) => paintBed(pen, picture, markOf),
  patient: ({ pen, picture }) => paintPatient(pen, picture),
  drapeFar: (frame) => drapesOf(frame).forEach((strand) => paintDrapeFar(frame.pen.in(scaling(0.01)), strand, frame.markOf)),
  rails: ({ pen, picture, markOf }) => { for (const side of [-1, 1] as const) paintRail(pen, picture, side, markOf); },
  drapeEdge: (frame) => drapesOf(frame).forEach((strand) => paintDrapeEdge(frame.pen.in(scaling(0.01)), strand, frame.markOf)),
  skinSurface: ({ pen, picture, markOf }) => paintSkinSurface(pen, picture, markOf),
  level: ({ pen, picture }) => paintLevel(pen, picture),
  lyingThings: (frame) => {
    frame.ultrasound.paint(frame);
    for (const item of frame.picture.items) if (item.heldBy === null) paintItem(frame.pen, item, frame.markOf);
  },
  sleeves: (frame) => paintSleeves(frame),
  neckband: ({ pen, picture }) => paintNeckband(pen.in(shift(picture.torsoX, 0)), picture.scenario.operator),
  cord: ({ pen, picture, markOf }) => {
    paintOutlet(pen, picture.outletX, picture.outletY);
    const cord = picture.strands.find(({ id }) => id === 'cord');
    if (cord !== undefined) paintCord(pen.in(scaling(0.01)), cord, picture, markOf);
  },
  hands: (frame) => {
    // The active hand lies on top.
    for (const side of [...SIDES].sort((a) => (a === frame.activeHand ? 1 : -1))) paintHandWithThing(frame, side);
  },
  labels: (frame) => frame.labels.paint(frame),
};
