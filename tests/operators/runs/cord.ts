import { expect } from 'vitest';
import { alone, type BreakRun } from '../../support/breakRun.ts';
import type { Operator } from '../../support/operator.ts';
import { BARE_END, HIGH_OUTLET, TAIL_INSIDE } from '../../support/rooms.ts';

/** Takes the probe and draws its short cord in over the bare rail, until the palm is at (x, y). */
const drawIn = (op: Operator, x: number, y: number): Operator => op.palmTo('left', 0.35, 1.5).turn('right', -50).take('right', 'probe').palmTo('right', -0.16, 1.2).palmTo('right', x, y);

/** The left hand takes the probe over, draws it on, and the right comes down on the cord behind it. */
function touchBehind(op: Operator, what: string): void {
  drawIn(op, 0, 1.3);
  const probe = op.thing('probe');
  op.fingersTo('left', probe.x + 0.06, probe.y + 0.1).fingersTo('left', probe.x, probe.y + 0.02, 0.1).grip('left');
  expect(op.holds('left')).toBe('probe');
  op.palmTo('right', -0.2, 1.5).palmTo('left', 0.3, 1.22).turn('right', -85).palmTo('right', -0.43, 1.55).touch('right', 0, -1, () => op.near.gap('glove.right', what)).palmTo('right', -0.3, 1.5);
}

/** The cord of the probe: one mistake is one break. */
export const CORD_RUNS: readonly BreakRun[] = [
  {
    what: 'a stretch that hung below is drawn in and laid on the field', room: 'high-rails-short-sheath',
    play: (op) => drawIn(op, 0.243, 1.2).palmTo('right', -0.18, 1.08, 0.6),
    // The stretch that hung spoils the sheet, the sheet the next stretch that lies down on it, and so on toward the probe.
    breaks: [
      {
        rule: 'cord-hung-below-returned', surface: 'drape.right#1:{0..20}', against: 'sheath#1:{10..29}', severity: 'major',
        spread: [...[0, 1, 3, 5].map((depth) => `${depth} drape.right#1:{0..20}`), ...[0, 2, 4, 6].map((depth) => `${depth} sheath#1:{10..29}`)],
      },
    ],
  },
  {
    what: 'bare cord behind a short sheath is drawn in and laid on the field', room: BARE_END,
    play: (op) => drawIn(op, 0.3, 1.2).palmTo('right', -0.1, 1.15, 0.9).wait(0.3),
    breaks: [alone('cord-on-field', 'drape.right#1:{2..20}', 'cord:{24..40}', { severity: 'major' })],
  },
  {
    what: 'the open end of the sheath is drawn in and laid on the field', room: TAIL_INSIDE,
    play: (op) => drawIn(op, 0.24, 1.2).palmTo('right', -0.1, 1.1, 0.6).wait(0.3),
    breaks: [alone('tail-on-field', 'drape.right#1:{8..20}', 'sheath#1:{20..27}', { spread: ['0 drape.right#1:{8..20}', '0 sheath#1:{17..19}'], severity: 'major' })],
  },
  {
    what: 'glove on the tail of the sheath', room: 'high-rails-short-sheath',
    play: (op) => touchBehind(op, 'sheathTail'),
    breaks: [alone('glove-on-sheath-tail', 'glove.right#1:fingers', 'sheath#1:{30..37}')],
  },
  {
    what: 'glove on bare cord', room: HIGH_OUTLET,
    play: (op) => op.palmTo('right', -0.25, 1.45).palmTo('left', 0.4, 1.5).palmTo('left', 0.97, 1.55).turn('left', -80).touch('left', 0, -1, () => op.near.gap('glove.left', 'bareCord')).palmTo('left', 0.7, 1.5),
    breaks: [alone('glove-on-bare-cord', 'glove.left#1:palm', 'cord:{60..94}', { severity: 'major' })],
  },
  {
    what: 'sleeve on bare cord', room: HIGH_OUTLET,
    play: (op) => op.palmTo('right', -0.25, 1.45).palmTo('left', 0.4, 1.5).palmTo('left', 0.8, 1.55).touch('left', 0, -1, () => op.near.gap('sleeve.left', 'bareCord')).palmTo('left', 0.7, 1.5),
    breaks: [alone('sleeve-on-bare-cord', 'gown#1:left.lowerSleeve', 'cord:{60..94}', { severity: 'major' })],
  },
];
