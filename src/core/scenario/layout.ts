import { length } from '../base/portableMath.ts';
import { signOf, type Side } from '../base/side.ts';
import type { Scenario } from './schema.ts';
import { hasGownTable } from './station.ts';

/** Sides of a thing that stands in the room, in metres from the patient's midline. */
export interface Span {
  readonly path: string;
  readonly low: number;
  readonly high: number;
}

/** Pieces into which the curve of the patient's hump is cut to measure it; 64 are exact to a millimetre. */
const HUMP_PIECES = 64;

const spanAround = (path: string, x: number, half: number): Span => ({ path, low: x - half, high: x + half });

/** x of the outer side of the bed rails, taken as positive. */
export const railOuterM = ({ room }: Scenario): number => room.rails.xM + room.rails.thicknessM / 2;

/** x at which the flat of the bed ends, taken as positive: the mattress bulges out to a raised rail. */
const bedsideM = ({ room }: Scenario): number => (room.rails.left.up || room.rails.right.up ? room.rails.xM - room.rails.thicknessM / 2 : room.bed.mattressWidthM / 2);

/** Half the width of the ultrasound machine, in metres. */
export const MACHINE_HALF_M = 0.2;

/** Everything that stands on the floor, seen along the bed. */
export function standing(scenario: Scenario): readonly Span[] {
  const { pole, machine, kitTable, bin } = scenario.room;
  const { table } = scenario.gown;
  return [
    spanAround('room.rails', 0, railOuterM(scenario)),
    spanAround('room.pole', pole.xM, pole.radiusM),
    spanAround('room.machine', machine.xM, MACHINE_HALF_M),
    spanAround('room.kitTable', kitTable.xM, kitTable.widthM / 2),
    spanAround('room.bin', bin.xM, bin.widthM / 2),
    ...(hasGownTable(scenario) ? [spanAround('gown.table', table.xM, table.widthM / 2)] : []),
  ];
}

/** Height of the patient's skin above the mattress at x: half an ellipse about the midline, 0 beside it. */
export function humpHeight({ room }: Scenario, x: number): number {
  const share = (2 * x) / room.patient.widthM;
  return room.patient.heightM * Math.sqrt(Math.max(0, 1 - share * share));
}

/** Way along the skin from the edge of the drape's opening down to the mattress on that side, in metres. */
export function skinWayM(scenario: Scenario, side: Side): number {
  const { siteXM, openingM, widthM } = scenario.room.patient;
  const from = siteXM + (signOf(side) * openingM) / 2;
  const to = (signOf(side) * widthM) / 2;
  let way = 0;
  for (let k = 0; k < HUMP_PIECES; k++) {
    const a = from + ((to - from) * k) / HUMP_PIECES;
    const b = from + ((to - from) * (k + 1)) / HUMP_PIECES;
    way += length(b - a, humpHeight(scenario, b) - humpHeight(scenario, a));
  }
  return way;
}

/** Way of the drape from the edge of its opening to the side of the bed: over the skin and the flat of the bed. */
export function wayToBedsideM(scenario: Scenario, side: Side): number {
  return skinWayM(scenario, side) + bedsideM(scenario) - scenario.room.patient.widthM / 2;
}

/** Way of the drape until it is over the raised rail, or over the side of the bed where the rail is down. */
export function wayOverM(scenario: Scenario, side: Side): number {
  const { rails } = scenario.room;
  const up = rails[side].up ? rails[side].topAboveMattressM + rails.thicknessM : 0;
  return wayToBedsideM(scenario, side) + up;
}

/** How far from the midline the drape covers the bed on that side, in metres, taken as positive. */
export function coveredToM(scenario: Scenario, side: Side): number {
  const short = Math.max(0, wayToBedsideM(scenario, side) - scenario.drape[side].lengthM);
  return bedsideM(scenario) - short;
}

/** Shortest way of the cord from its outlet over the raised rail of that side to the skin or bed at x, in metres. */
export function cordWayM(scenario: Scenario, x: number): number {
  const { machine, bed, rails } = scenario.room;
  const side: Side = machine.outletXM > 0 ? 'left' : 'right';
  const y = bed.mattressTopM + humpHeight(scenario, x);
  const railX = signOf(side) * rails.xM;
  const railY = bed.mattressTopM + (rails[side].up ? rails[side].topAboveMattressM : 0);
  return length(machine.outletXM - railX, machine.outletYM - railY) + length(railX - x, railY - y);
}
