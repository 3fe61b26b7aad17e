import { cos, PI, sin } from '../base/portableMath.ts';
import { SIDES, signOf, type Side } from '../base/side.ts';
import type { Scenario } from '../scenario/schema.ts';

export type Point = readonly [number, number];

/** A straight edge of something fixed, with rounding radius, in metres. */
export interface Edge {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly r: number;
}

export interface RailLayout {
  readonly up: boolean;
  readonly x: number;
  readonly bottom: number;
  /** Middle of the round top end. */
  readonly topCentre: number;
  readonly radius: number;
}

/**
 * Where everything that stands still is, derived from the scenario; the bed may stand higher or lower than there. Metres, x 0 at the
 * patient's midline, y up from the floor.
 */
export interface Layout {
  /** How far the bed is above where the scenario has it; below 0 it is lower. */
  readonly bedUpM: number;
  readonly mattress: { readonly halfWidth: number; readonly top: number; readonly bottom: number };
  readonly rails: Readonly<Record<Side, RailLayout>>;
  /** Top of what the drape hangs over on that side: the rail, or the edge of the mattress when the rail is down. */
  readonly crest: Readonly<Record<Side, { readonly x: number; readonly y: number }>>;
  /** Outline of the hump relative to (0, mattress top), counter-clockwise, the flat bottom sunk 2 cm into the mattress. */
  readonly hump: readonly Point[];
  /** Upper part of the outline from the right side (negative x) to the left. */
  readonly skin: readonly Point[];
  readonly kitTable: { readonly left: number; readonly right: number; readonly top: number };
  readonly bin: { readonly left: number; readonly right: number; readonly rim: number };
  readonly machine: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly pole: { readonly x: number; readonly top: number; readonly radius: number };
}

const HUMP_PIECES = 32;

/** The room of a scenario with its bed raised by `bedUpM`. */
export function layoutOf(scenario: Scenario, bedUpM = 0): Layout {
  const { bed, rails, patient, kitTable, bin, machine, pole } = scenario.room;
  const mattressTop = bed.mattressTopM + bedUpM;
  const railOf = (side: Side): RailLayout => {
    const radius = rails.thicknessM / 2;
    return {
      up: rails[side].up,
      x: signOf(side) * rails.xM,
      bottom: mattressTop - bed.mattressThicknessM - 0.1,
      topCentre: mattressTop + rails[side].topAboveMattressM - radius,
      radius,
    };
  };
  const rail = { left: railOf('left'), right: railOf('right') };
  // The mattress reaches up to the rails: a gap narrower than a cord would wedge it, and a real mattress bulges there.
  const halfWidth = SIDES.some((side) => rail[side].up) ? rails.xM - rails.thicknessM / 2 - 0.002 : bed.mattressWidthM / 2;
  const crestOf = (side: Side) =>
    rail[side].up
      ? { x: rail[side].x, y: rail[side].topCentre + rail[side].radius }
      : { x: signOf(side) * halfWidth, y: mattressTop };
  const skin = humpTop(patient.widthM / 2, patient.heightM);
  return {
    bedUpM,
    mattress: { halfWidth, top: mattressTop, bottom: mattressTop - bed.mattressThicknessM },
    rails: rail,
    crest: { left: crestOf('left'), right: crestOf('right') },
    skin,
    hump: [[-patient.widthM / 2, -0.02], [patient.widthM / 2, -0.02], ...[...skin].reverse()],
    kitTable: { left: kitTable.xM - kitTable.widthM / 2, right: kitTable.xM + kitTable.widthM / 2, top: kitTable.topM },
    bin: { left: bin.xM - bin.widthM / 2, right: bin.xM + bin.widthM / 2, rim: bin.rimM },
    machine: { left: machine.xM - 0.2, right: machine.xM + 0.2, top: 1.35, bottom: 0.1 },
    pole: { x: pole.xM, top: pole.topM, radius: pole.radiusM },
  };
}

/** Half an ellipse from (−halfWidth, 0) over (0, height) to (halfWidth, 0). */
function humpTop(halfWidth: number, height: number): Point[] {
  const points: Point[] = [];
  for (let k = 0; k <= HUMP_PIECES; k++) {
    const angle = PI * (1 - k / HUMP_PIECES);
    points.push([halfWidth * cos(angle), k === 0 || k === HUMP_PIECES ? 0 : height * sin(angle)]);
  }
  return points;
}

/** Over the bed, between its edges. */
export const isOverBed = ({ crest }: Layout, x: number): boolean => x > crest.right.x && x < crest.left.x;

/** Height of the skin above the mattress at x, measured from the patient's middle; 0 beside the patient. */
export function skinHeight(layout: Layout, x: number): number {
  const { skin } = layout;
  for (let k = 1; k < skin.length; k++) {
    const [ax, ay] = skin[k - 1]!;
    const [bx, by] = skin[k]!;
    if (x >= ax && x <= bx) return ay + ((by - ay) * (x - ax)) / (bx - ax || 1);
  }
  return 0;
}
