import type { Scenario } from '../../core/scenario/schema.ts';
import { hasGownTable, loadsSheath } from '../../core/scenario/station.ts';

/** What a framing must show at least, in metres. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/**
 * `field` is the working field with both rails, `work` also the kit table and the bin, `reach` goes on to the machine, `room` is everything.
 * Where a probe is to be sheathed, the field reaches up to the probe that hangs over it, and the work goes from the kit table to the
 * assistant beside the machine.
 */
export type Framing = 'field' | 'work' | 'reach' | 'room';

const ROOM: Frame = { left: -2.02, right: 2.02, bottom: -0.08, top: 2.2 };
/** Space beside the things that a framing is about, and half the width of the machine, in metres. */
const BESIDE_M = 0.06;
const MACHINE_HALF_M = 0.22;
/** How much is seen of the assistant to either side, head and chest, and how high the hand is with a probe that hangs over the mouth of a sheath (m). */
const PERSON_HALF_M = 0.14;
const HANGING_TOP_M = 1.94;

/** Part of the room that a framing shows, from where the scenario puts things; before a room is known, the default places. */
export function frameOf(framing: Framing, scenario: Scenario | null): Frame {
  if (framing === 'room') return ROOM;
  if (scenario?.station === 'gown') return gowning(scenario, framing);
  const rail = (scenario?.room.rails.xM ?? 0.49) + 0.11;
  const loads = scenario !== null && loadsSheath(scenario);
  if (framing === 'field') return { left: -rail, right: rail, bottom: 0.8, top: loads ? HANGING_TOP_M : 1.52 };
  const { xM, widthM } = scenario?.room.bin ?? { xM: -1.5, widthM: 0.34 };
  const binEdge = xM < 0 ? xM - widthM / 2 - BESIDE_M : xM + widthM / 2 + BESIDE_M;
  const gloves = scenario && hasGownTable(scenario) ? gloveTable(scenario) : [];
  const work = { left: Math.min(-rail, binEdge, ...gloves), right: Math.max(rail, binEdge, ...gloves), bottom: 0.5, top: 1.7 };
  if (loads) return framing === 'work' ? loadingFrame(scenario.room, rail) : around(work, loadingFrame(scenario.room, rail));
  if (framing === 'work') return work;
  const machine = scenario?.room.machine.xM ?? 1.15;
  return around(work, { ...work, left: machine - MACHINE_HALF_M - BESIDE_M, right: machine + MACHINE_HALF_M + BESIDE_M });
}

/** From the kit table over the bed to machine and assistant, wherever they stand. */
function loadingFrame({ kitTable, machine, assistantXM }: Scenario['room'], rail: number): Frame {
  const table = kitTable.widthM / 2 + BESIDE_M;
  const left = Math.min(-rail, kitTable.xM - table, machine.xM - MACHINE_HALF_M, assistantXM - PERSON_HALF_M);
  const right = Math.max(rail, kitTable.xM + table, machine.xM + MACHINE_HALF_M, assistantXM + PERSON_HALF_M);
  return { left, right, bottom: 0.5, top: HANGING_TOP_M };
}

/** Edges of the table on which a new glove is opened. */
const gloveTable = ({ gown: { table } }: Scenario): readonly number[] => [-1, 1].map((way) => table.xM + way * (table.widthM / 2 + BESIDE_M));

const around = (a: Frame, b: Frame): Frame => ({ left: Math.min(a.left, b.left), right: Math.max(a.right, b.right), bottom: Math.min(a.bottom, b.bottom), top: Math.max(a.top, b.top) });

/** Hands reach over the outer edge of the gown table by so much, and what they hold over an arm that is stretched up, in metres. */
const BEYOND_TABLE_M = 0.2;
const OVER_ARM_M = 0.12;

/** While a gown is put on: from its table to beside the operator, farther out to the far rail; floor and raised hands both. */
function gowning({ gown, room, operator }: Scenario, framing: Framing): Frame {
  const sign = Math.sign(gown.table.xM - gown.standXM);
  const edge = gown.table.xM + sign * (gown.table.widthM / 2 + BEYOND_TABLE_M);
  const other = framing === 'field' || framing === 'work' ? gown.standXM + (gown.standXM - edge) * 0.8 : -sign * (room.rails.xM + BESIDE_M);
  return { left: Math.min(edge, other), right: Math.max(edge, other), bottom: -0.05, top: operator.shoulderM + operator.upperArmM + operator.forearmM + OVER_ARM_M };
}
