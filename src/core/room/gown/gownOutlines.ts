import { SIDES } from '../../base/side.ts';
import type { Scene } from '../scene.ts';
import type { Slot, Slots } from '../surfaces.ts';
import { CLOTH_R } from './clothStrands.ts';
import { SLEEVE_LINKS, sleeveLeftM } from './gownFacts.ts';

/** Size of somebody who passes by (m). */
const PERSON_R = 0.2;
const PERSON_TOP_M = 1.5;
/** Height of the sides of the table that count as its edge (m). */
const SIDE_M = 0.25;
/** The wrapper ends inside the edge of the table (m). */
const WRAPPER_INSIDE_M = 0.03;

type Put = (slot: Slot, group: 'gownCloth' | 'bedside' | 'person', piece: number, ax: number, ay: number, bx: number, by: number, r: number) => void;

/** Outlines of what is there only where a gown is put on: its table, the hanging cloth, somebody who passes by. */
export function gownOutlines(scene: Scene, slots: NonNullable<Slots['gown']>, put: Put, forget: (slot: Slot) => void): void {
  const { gown, dress, world, scenario } = scene;
  const { xM, topM, widthM } = scenario.gown.table;
  const [left, right] = [xM - widthM / 2, xM + widthM / 2];
  put(slots.table, 'bedside', 0, left + WRAPPER_INSIDE_M, topM, right - WRAPPER_INSIDE_M, topM, 0);
  put(slots.tableSide, 'bedside', 0, left, topM - SIDE_M, left, topM, 0);
  put(slots.tableSide, 'bedside', 1, right, topM, right, topM - SIDE_M, 0);
  if (dress!.personX === null) forget(slots.person);
  else put(slots.person, 'person', 0, dress!.personX, PERSON_R, dress!.personX, PERSON_TOP_M, PERSON_R);
  if (!dress!.hanging) return;
  for (const side of SIDES) {
    const start = world.strandStart(gown!.edges[side]);
    for (let k = 0, links = world.strandSize(gown!.edges[side]) - 1; k < links; k++) {
      put(slots.edges[side] + k, 'gownCloth', 0, world.x[start + k]!, world.y[start + k]!, world.x[start + k + 1]!, world.y[start + k + 1]!, CLOTH_R);
    }
    if (sleeveLeftM(scene, side) <= 0) continue;
    const top = world.strandStart(gown!.sleeves[side]);
    for (let k = 0; k < SLEEVE_LINKS; k++) put(slots.sleeves[side] + k, 'gownCloth', 0, world.x[top + k]!, world.y[top + k]!, world.x[top + k + 1]!, world.y[top + k + 1]!, CLOTH_R);
  }
  const end = (side: 'left' | 'right'): number => world.strandStart(gown!.edges[side]) + world.strandSize(gown!.edges[side]) - 1;
  put(slots.hem, 'gownCloth', 0, world.x[end('right')]!, world.y[end('right')]!, world.x[end('left')]!, world.y[end('left')]!, CLOTH_R);
}
