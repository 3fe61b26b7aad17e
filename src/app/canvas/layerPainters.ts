import { otherSide, SIDES, type Side } from '../../core/base/side.ts';
import { paintAssistant } from './art/assistant.ts';
import { isBehindOperator, paintAssistantArms, paintAssistantBody } from './art/assistantAtWork.ts';
import { paintBed } from './art/bed.ts';
import { paintBedControls } from './art/bedControls.ts';
import { paintBin } from './art/bin.ts';
import { paintKitTable } from './art/kitTable.ts';
import { paintLevel } from './art/level.ts';
import { paintMachine, paintOutlet } from './art/machine.ts';
import { isGowned, paintNeckband, paintOperatorBody } from './art/operatorBody.ts';
import { paintPatient } from './art/patient.ts';
import { paintPole } from './art/pole.ts';
import { paintHolderBefore } from './art/probeHolder.ts';
import { paintRails } from './art/rails.ts';
import { paintSkinSurface } from './art/skinSurface.ts';
import { paintWall } from './art/wall.ts';
import type { LayerName } from './drawingOrder.ts';
import type { Frame } from './frame.ts';
import { paintFromSide } from './gown/fromSide.ts';
import { paintGownTable } from './gown/gownTable.ts';
import { paintHangingGown } from './gown/hangingGown.ts';
import { paintHolds } from './holds/paintHolds.ts';
import { paintHandWithThing, paintSleeves } from './hand/paintArms.ts';
import { paintHangingProbe, paintLyingThings } from './items/lyingThings.ts';
import { shift } from './pen/affine.ts';
import { paintCordKept, paintDrapeEdges, paintDrapesFar, paintFolds, paintPocketBefore, paintPocketBehind } from './strands/keptStrands.ts';

/** How each layer is drawn. */
export const LAYER_PAINTERS: Readonly<Record<LayerName, (frame: Frame) => void>> = {
  wall: ({ pen }) => paintWall(pen),
  pole: ({ pen, picture, markOf }) => paintPole(pen, picture, markOf),
  kitTable: ({ pen, picture, markOf }) => paintKitTable(pen, picture, markOf),
  bin: ({ pen, picture, markOf }) => paintBin(pen, picture, markOf),
  machine: ({ pen, picture, markOf }) => paintMachine(pen, picture, markOf),
  assistant: ({ pen, picture, shown }) => {
    if (picture.assistant.waits) paintAssistant(pen, picture, shown);
  },
  assistantBehind: ({ pen, picture, markOf, shown }) => {
    if (!isBehindOperator(picture)) return;
    paintAssistantBody(pen, picture.assistant, shown);
    paintAssistantArms(pen, picture, shown);
    // The operator, who is one of the layers that are kept, stands before.
    paintOperatorBody(pen.in(shift(picture.torsoX, 0)), picture, markOf, shown);
  },
  assistantBody: ({ pen, picture, shown }) => {
    if (!picture.assistant.waits && !isBehindOperator(picture)) paintAssistantBody(pen, picture.assistant, shown);
  },
  assistantArms: ({ pen, picture, shown }) => {
    if (!picture.assistant.waits && !isBehindOperator(picture)) paintAssistantArms(pen, picture, shown);
  },
  operatorBody: ({ pen, picture, markOf, shown }) => paintOperatorBody(pen, picture, markOf, shown),
  bed: ({ pen, picture, markOf }) => paintBed(pen, picture, markOf),
  patient: ({ pen, picture }) => paintPatient(pen, picture),
  drapeFar: paintDrapesFar,
  rails: (frame) => {
    paintRails(frame);
    paintBedControls(frame.pen, frame.picture);
  },
  drapeEdge: paintDrapeEdges,
  skinSurface: ({ pen, picture, markOf }) => paintSkinSurface(pen, picture, markOf),
  level: ({ pen, picture }) => paintLevel(pen, picture),
  gownTable: paintGownTable,
  hangingGown: paintHangingGown,
  lyingThings: (frame) => {
    frame.ultrasound.paint(frame);
    paintLyingThings(frame);
  },
  sleeves: paintSleeves,
  neckband: ({ pen, picture }) => {
    if (isGowned(picture)) paintNeckband(pen.in(shift(picture.torsoX, 0)), picture.scenario.operator);
  },
  pocketFar: paintPocketBehind,
  hangingProbe: (frame) => {
    paintHangingProbe(frame);
    paintHolderBefore(frame.pen, frame.picture);
  },
  cord: (frame) => {
    paintOutlet(frame.pen, frame.picture.outletX, frame.picture.outletY);
    paintCordKept(frame);
  },
  pocketNear: paintPocketBefore,
  hands: (frame) => {
    for (const side of backToFront(frame)) paintHandWithThing(frame, side);
  },
  foldOverFingers: paintFolds,
  nextHolds: paintHolds,
  labels: (frame) => {
    if (frame.named) frame.labels.paint(frame);
  },
  fromSide: paintFromSide,
};

/** The active hand lies on top, but one that goes into a glove lies in it, under the hand that holds it. */
function backToFront({ picture, activeHand }: Frame): readonly Side[] {
  const top = SIDES.find((side) => picture.gown?.arms[otherSide(side)].glove === 'entered') ?? activeHand ?? 'right';
  return [otherSide(top), top];
}
