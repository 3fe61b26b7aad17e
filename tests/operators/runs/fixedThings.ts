import { expect } from 'vitest';
import { otherSide, type Side } from '../../../src/core/base/side.ts';
import { alone, type BreakRun } from '../../support/breakRun.ts';
import type { Operator } from '../../support/operator.ts';
import { POLE_ASIDE } from '../../support/rooms.ts';

/** Moves the hand of `side` in the direction (dx, dy) until it, or what is named, touches. */
const touch = (op: Operator, side: Side, dx: number, dy: number, against: string, what = `glove.${side}`): Operator => op.touch(side, dx, dy, () => op.near.gap(what, against));
/** The hand at rest is lifted before the operator steps aside, so that its arm does not trail over the rail. */
const lift = (op: Operator, side: Side): Operator => op.palmTo(otherSide(side), side === 'right' ? 0.25 : -0.25, 1.45);
/** The left hand stands over the bare rail, fingers down. */
const overRail = (op: Operator): Operator => op.palmTo('left', 0.4, 1.55).turn('left', -80).palmTo('left', 0.54, 1.6);
/** The right hand fetches the needle from the table and carries it over the patient, under the face. */
const carryNeedle = (op: Operator): Operator =>
  lift(op, 'right').palmTo('right', -0.3, 1.45).palmTo('right', -0.75, 1.45).turn('right', -30).take('right', 'needle').palmTo('right', -0.72, 1.45).palmTo('right', -0.3, 1.38).palmTo('right', 0.25, 1.38);

/** One touch of rail, pole, machine, table or bed is one break. */
export const FIXED_THING_RUNS: readonly BreakRun[] = [
  {
    what: 'glove on a bare rail', room: 'high-rails-short-sheath',
    play: (op) => touch(overRail(op), 'left', 0, -1, 'rail.left').palmTo('left', 0.45, 1.6),
    breaks: [alone('glove-on-rail', 'glove.left#1:fingers', 'rail.left', { severity: 'major' })],
  },
  {
    what: 'sleeve on a bare rail', room: 'high-rails-short-sheath',
    play: (op) => touch(op.palmTo('left', 0.4, 1.5), 'left', 0, -1, 'rail.left', 'sleeve.left').palmTo('left', 0.3, 1.5),
    breaks: [alone('sleeve-on-rail', 'gown#1:left.lowerSleeve', 'rail.left')],
  },
  {
    what: 'gel packet on a bare rail', room: 'high-rails-short-sheath',
    play: (op) => touch(op.palmTo('right', -0.25, 1.5).turn('left', -40).take('left', 'gel').palmTo('left', 0.3, 1.5).palmTo('left', 0.56, 1.58), 'left', 0, -1, 'rail.left', 'gel').palmTo('left', 0.4, 1.6),
    breaks: [alone('item-on-rail', 'gel#1:body', 'rail.left', { spread: ['0 gel#1:body', '1 glove.left#1:fingers'], severity: 'major' })],
  },
  {
    what: 'probe on a bare rail', room: 'high-rails-short-sheath',
    play: (op) => {
      op.palmTo('right', -0.1, 1.35).turn('left', -50).take('left', 'probe').palmTo('left', op.hand('left').x, 1.25).palmTo('left', -0.1, 1.25).turn('left', 60).palmTo('left', -0.25, 1.28);
      touch(op, 'left', -1, 0, 'rail.right', 'sheath:probe').palmTo('left', -0.2, 1.25);
    },
    // The glove lies on the first stretches of the cord.
    breaks: [alone('sheath-on-rail', 'sheath#1:probe', 'rail.right', { spread: ['0 sheath#1:probe', '1 glove.left#1:fingers', '2 sheath#1:{0..6}'], severity: 'critical' })],
  },
  {
    what: 'glove on the pole',
    play: (op) => touch(lift(op, 'right').palmTo('right', 0.3, 1.5), 'right', 1, 0, 'pole').palmTo('right', 0.3, 1.5),
    breaks: [alone('glove-on-pole', 'glove.right#1:fingers', 'pole')],
  },
  {
    what: 'sleeve on the pole',
    play: (op) => touch(lift(op, 'left').palmTo('left', 0.4, 1.45), 'left', 1, 0, 'pole', 'sleeve.left').palmTo('left', 0.3, 1.45),
    breaks: [alone('sleeve-on-pole', 'gown#1:left.lowerSleeve', 'pole')],
  },
  {
    what: 'needle on the pole',
    play: (op) => touch(carryNeedle(op), 'right', 1, 0, 'pole', 'needle').palmTo('right', 0.25, 1.38),
    breaks: [alone('item-on-pole', 'needle#1:needle', 'pole', { severity: 'critical' })],
  },
  {
    what: 'probe on the pole',
    play: (op) => {
      lift(op, 'right').turn('right', -50).take('right', 'probe').palmTo('right', 0.2, 1.4).palmTo('right', 0.3, 1.45).turn('right', 60);
      touch(op, 'right', 1, 0, 'pole', 'sheath:probe').palmTo('right', 0.3, 1.4);
    },
    breaks: [alone('sheath-on-pole', 'sheath#1:probe', 'pole', { spread: ['0 sheath#1:probe', '1 glove.right#1:fingers'], severity: 'critical' })],
  },
  {
    what: 'glove on the machine', room: POLE_ASIDE,
    play: (op) => touch(lift(op, 'right').palmTo('right', 0.3, 1.5).palmTo('right', 0.85, 1.55).turn('right', -80), 'right', 0.3, -0.95, 'machine').palmTo('right', 0.7, 1.6),
    breaks: [alone('glove-on-machine', 'glove.right#1:back', 'machine')],
  },
  {
    what: 'elbow on the machine', room: POLE_ASIDE,
    play: (op) => touch(lift(op, 'left').palmTo('left', 0.4, 1.5).palmTo('left', 1.1, 1.62), 'left', 0, -1, 'machine', 'sleeve.left').palmTo('left', 0.9, 1.65),
    breaks: [alone('sleeve-on-machine', 'gown#1:left.upperSleeve', 'machine')],
  },
  {
    what: 'needle on the machine', room: POLE_ASIDE,
    play: (op) => touch(carryNeedle(op).palmTo('right', 0.7, 1.45), 'right', 1, -0.3, 'machine', 'needle').palmTo('right', 0.4, 1.45),
    breaks: [alone('item-on-machine', 'needle#1:needle', 'machine', { severity: 'critical' })],
  },
  {
    what: 'glove on the side of the kit table',
    play: (op) => {
      op.palmTo('right', -0.4, 1.45).palmTo('right', -0.745, 1.4).turn('right', -70).palmTo('right', -0.745, 1.1).palmTo('right', -0.745, 1.005, 0.1);
      touch(op, 'right', -1, 0, 'tableEdge').palmTo('right', -0.74, 1.4);
    },
    breaks: [alone('glove-on-table-edge', 'glove.right#1:fingers', 'tableEdge')],
  },
  {
    what: 'glove on the bed beside a drape that ends on it', room: 'high-rails-short-sheath',
    play: (op) => touch(op.palmTo('left', 0.4, 1.55).turn('left', -90).palmTo('left', 0.455, 1.55), 'left', 0, -1, 'bed').palmTo('left', 0.45, 1.5),
    breaks: [alone('glove-on-bed', 'glove.left#1:fingers', 'bed')],
  },
  {
    what: 'a glove that met a rail takes it to the gel packet, to the drape where the packet lay, and to the site', room: 'high-rails-short-sheath',
    play: (op) => {
      touch(overRail(op), 'left', 0, -1, 'rail.left').palmTo('left', 0.45, 1.6).palmTo('left', 0.3, 1.4).turn('left', -40).take('left', 'gel');
      const site = op.site();
      op.endTo('left', site.x + 0.05, site.y + 0.16).endTo('left', site.x, site.y + 0.04, 0.1).use('left', 1.2);
    },
    breaks: [alone('glove-on-rail', 'glove.left#1:fingers', 'rail.left', { spread: ['0 glove.left#1:fingers', '1 gel#1:body', '2 drape.left#1:{16..24}', '2 site#1:13'], severity: 'critical', escalatedBy: ['unsterile-used-at-site'] })],
    after: ({ result }) => expect(result.breaks[0]!.reach).toBe('site'),
  },
];
