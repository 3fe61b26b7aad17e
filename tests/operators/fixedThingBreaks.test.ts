import { describe, it } from 'vitest';
import { otherSide, type Side } from '../../src/core/base/side.ts';
import { expectBreaks, type ExpectedBreak } from '../support/expectBreaks.ts';
import type { Operator } from '../support/operator.ts';
import { POLE_ASIDE } from '../support/rooms.ts';
import { runOperator } from '../support/runOperator.ts';

/** One part of one thing met something bare, and nothing came of it. */
const alone = (rule: string, surface: string, against: string, more: Partial<ExpectedBreak> = {}): ExpectedBreak => ({ rule, surface, against, spread: [`0 ${surface}`], ...more });

/** Moves the hand of `side` in the direction (dx, dy) until it touches. */
const touch = (op: Operator, side: Side, dx: number, dy: number, against: string, what = `glove.${side}`): Operator => op.touch(side, dx, dy, () => op.near.gap(what, against));

/** The hand at rest is lifted before the operator steps aside, so that its arm does not trail over the rail. */
const lift = (op: Operator, side: Side): Operator => op.palmTo(otherSide(side), side === 'right' ? 0.25 : -0.25, 1.45);

describe('One touch of a fixed thing is one break', () => {
  it('glove on a bare rail', () => {
    const { result } = runOperator((op) => touch(op.palmTo('left', 0.4, 1.55).turn('left', -80).palmTo('left', 0.54, 1.6), 'left', 0, -1, 'rail.left').palmTo('left', 0.45, 1.6), 'high-rails-short-sheath');
    expectBreaks(result, [alone('glove-on-rail', 'glove.left#1:fingers', 'rail.left', { severity: 'major' })]);
  });

  it('sleeve on a bare rail', () => {
    const { result } = runOperator((op) => touch(op.palmTo('left', 0.4, 1.5), 'left', 0, -1, 'rail.left', 'sleeve.left').palmTo('left', 0.3, 1.5), 'high-rails-short-sheath');
    expectBreaks(result, [alone('sleeve-on-rail', 'gown#1:left.lowerSleeve', 'rail.left')]);
  });

  it('glove on the pole', () => {
    const { result } = runOperator((op) => touch(lift(op, 'right').palmTo('right', 0.3, 1.5), 'right', 1, 0, 'pole').palmTo('right', 0.3, 1.5));
    expectBreaks(result, [alone('glove-on-pole', 'glove.right#1:fingers', 'pole')]);
  });

  it('glove on the machine', () => {
    const { result } = runOperator((op) => touch(lift(op, 'right').palmTo('right', 0.3, 1.5).palmTo('right', 0.85, 1.55).turn('right', -80), 'right', 0.3, -0.95, 'machine').palmTo('right', 0.7, 1.6), POLE_ASIDE);
    expectBreaks(result, [alone('glove-on-machine', 'glove.right#1:back', 'machine')]);
  });

  it('glove on the side of the kit table', () => {
    const { result } = runOperator((op) => {
      op.palmTo('right', -0.4, 1.45).palmTo('right', -0.745, 1.4).turn('right', -70).palmTo('right', -0.745, 1.1).palmTo('right', -0.745, 1.005, 0.1);
      touch(op, 'right', -1, 0, 'tableEdge').palmTo('right', -0.74, 1.4);
    });
    expectBreaks(result, [alone('glove-on-table-edge', 'glove.right#1:fingers', 'tableEdge')]);
  });

  it('a glove that met a rail takes it to the gel packet, to the drape where the packet lay, and to the site', () => {
    const { result } = runOperator((op) => {
      touch(op.palmTo('left', 0.4, 1.55).turn('left', -80).palmTo('left', 0.54, 1.6), 'left', 0, -1, 'rail.left').palmTo('left', 0.45, 1.6).palmTo('left', 0.3, 1.4);
      op.turn('left', -40).take('left', 'gel');
      const site = op.site();
      op.endTo('left', site.x + 0.05, site.y + 0.16).endTo('left', site.x, site.y + 0.04, 0.1).use('left', 1.2);
    }, 'high-rails-short-sheath');
    const spread = ['0 glove.left#1:fingers', '1 gel#1:body', '2 drape.left#1:{16..24}', '2 site#1:13'];
    expectBreaks(result, [{ rule: 'glove-on-rail', surface: 'glove.left#1:fingers', against: 'rail.left', spread, severity: 'critical' }]);
  });
});
