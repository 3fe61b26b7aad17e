import type { Scenario } from '../../../src/core/scenario/schema.ts';
import { alone, type BreakRun } from '../../support/breakRun.ts';
import { Loading } from '../../support/loading.ts';
import type { Operator } from '../../support/operator.ts';
import { ANY_GEL, HEAVY_PROBE } from '../../support/rooms.ts';
import type { ShippedRoom } from '../../support/runOperator.ts';

const run = (what: string, play: (loading: Loading) => unknown, breaks: BreakRun['breaks'], room: ShippedRoom | Scenario = 'sheath-short'): BreakRun => ({ what, room, play: (op: Operator) => void play(new Loading(op)), breaks });

/** The left hand takes the bottle of gel from the top of the machine. */
function takeBottle({ op }: Loading): Operator {
  return op.palmTo('left', 0.5, 1.6).palmTo('left', 0.85, 1.66).turn('left', -60).fingersTo('left', 1.02, 1.49, 0.15).grip('left').wait(0.3);
}

/** Both hands come down with the opened sheath until something is broken. */
function lowerMouth({ op }: Loading): void {
  const { x } = op.hand('left');
  for (let k = 0; k < 60 && op.run.breaks.length === 0; k++) op.palmsTo([['right', 0.04, 1.34 - 0.002 * k], ['left', x, 1.35 - 0.002 * k]], 0.05);
}

/** Both hands go aside with the opened sheath, the left to that x, and the assistant lets go of the probe. */
function dropProbe(l: Loading, x: number): void {
  l.fetch().open().aside().bring();
  l.op.palmTo('left', 0.3, 1.25).palmsTo([['left', 0.2, 1.25], ['right', -0.3, 1.4]], 0.15).palmsTo([['left', x, 1.25], ['right', x - 0.25, 1.4]], 0.15);
  l.ask('letGo', 2);
}

/** Loading the probe into its sheath. */
export const SHEATH_RUNS: readonly BreakRun[] = [
  run(
    'a glove takes the bare probe',
    (l) => {
      l.fetch().open().aside().bring();
      l.op.turn('left', 45).palmTo('left', 0.24, 1.2);
      const { x, y } = l.op.thing('probe');
      l.op.fingersTo('left', x + 0.01, y - 0.07, 0.15).grip('left');
    },
    [alone('glove-on-bare-probe', 'glove.left#1:fingers', 'bareProbe', { severity: 'major' })],
  ),
  run('gel from a bottle that is not sterile is taken', (l) => takeBottle(l), [alone('glove-on-unsterile-item', 'glove.left#1:fingers', 'bottle#1:body', { severity: 'major' })]),
  run(
    'that bottle is laid on the field',
    (l) => takeBottle(l).palmTo('left', 0.8, 1.7).palmTo('left', 0.4, 1.6).turn('left', -40).palmTo('left', 0.36, 1.3).endTo('left', 0.34, 1.12).endTo('left', 0.34, 1.03, 0.1).release('left').palmTo('left', 0.36, 1.3).wait(0.5),
    [
      alone('glove-on-unsterile-item', 'glove.left#1:fingers', 'bottle#1:body', { severity: 'major' }),
      { rule: 'unsterile-item-on-field', surface: 'drape.left#1:{12..26}', against: 'bottle#1:body', severity: 'major', spread: ['0 drape.left#1:{12..26}'] },
    ],
  ),
  run(
    'gel from that bottle goes into the sheath',
    (l) => {
      takeBottle(l.fetch().open().aside()).palmTo('left', 0.8, 1.7).palmTo('left', 0.4, 1.6).palmTo('left', 0.33, 1.5);
      const [x, y] = l.mouth();
      l.op.endTo('left', x + 0.02, y + 0.08).use('left', 0.6).palmTo('left', 0.35, 1.5).wait(1);
    },
    [alone('unsterile-gel', 'sheath#1:probe', 'bottle#1:body', { severity: 'critical' })],
    ANY_GEL,
  ),
  run(
    'the opened sheath is held too low',
    (l) => lowerMouth(l.fetch().open()),
    [{ rule: 'sheath-below-field', surface: 'sheath#1:probe', against: null, severity: 'critical', spread: ['0 sheath#1:probe', '1 drape.left#1:{5..12}'] }],
  ),
  run(
    'a loose sheath is opened before it is gathered',
    (l) => l.fetch().open().op.wait(0.2),
    [
      {
        rule: 'sheath-below-field', surface: 'sheath#1:probe', against: null, severity: 'critical',
        spread: ['0 sheath#1:probe', '0 sheath#1:{0..60}', '0 sheath#1:end', '1 drape.left#1:{0..30}', '2 sheath#1:{0..60}', '3 drape.left#1:{0..30}'],
      },
    ],
    'sheath-loose-clumsy',
  ),
  run('the probe is too heavy for the film', (l) => l.fetch().open().aside().gel().bring().under().lower(), [alone('sheath-torn', 'sheath#1:probe', null, { severity: 'critical' })], HEAVY_PROBE),
  run(
    'the probe comes down beside the mouth, and the film is moved against it',
    (l) => {
      l.fetch().open().aside().bring().under();
      l.op.palmTo('right', l.op.hand('right').x - 0.09, 1.36, 0.1);
      l.ask('lower', 3.2).ask('stop', 1);
      l.op.touch('right', 1, 0, () => l.op.near.gap('sheath', 'bareProbe'));
    },
    [{ rule: 'sheath-on-bare-probe', surface: 'sheath#1:{0..2}', against: 'bareProbe', spread: ['0 sheath#1:{0..2}', '0 sheath#1:probe'] }],
  ),
  run(
    'the assistant is told to let go of a probe that nobody holds',
    (l) => l.fetch().open().aside().gel().bring().under().ask('lower', 2.4).ask('letGo', 3),
    [
      { rule: 'sheath-on-bare-cord', surface: 'sheath#1:1', against: 'cord:{0..12}', spread: ['0 sheath#1:{0..1}'] },
      alone('sleeve-on-bare-cord', 'gown#1:left.upperSleeve', 'cord:{0..12}'),
    ],
  ),
  run('the bare probe falls on to a sleeve', (l) => dropProbe(l, -0.2), [alone('sleeve-on-bare-probe', 'gown#1:left.upperSleeve', 'bareProbe')]),
  run(
    'the bare probe falls on to the field',
    (l) => dropProbe(l, -0.3),
    [{ rule: 'bare-probe-on-field', surface: 'drape.left#1:{20..38}', against: 'bareProbe', severity: 'major', spread: ['0 drape.left#1:{20..38}'] }],
  ),
  run(
    'a hand keeps the open end while the assistant takes it',
    (l) => {
      l.toProbe().letGo();
      l.op.palmTo('right', l.op.hand('right').x + 0.03, 1.46, 0.15);
      l.ask('pullTail', 0.8).ask('stop', 1);
    },
    [{ rule: 'glove-on-sheath-tail', surface: 'glove.right#1:fingers', against: 'sheath#1:openEnd', spread: ['0 glove.right#1:fingers', '1 sheath#1:{5..9}'] }],
  ),
  run(
    'a glove comes up under the assistant’s arm',
    (l) => {
      l.fetch().open().aside().bring();
      l.op.palmTo('left', 0.3, 1.25).touch('left', 0, 1, () => l.op.near.gap('glove.left', 'bareHand')).palmTo('left', 0.28, 1.2);
    },
    [alone('glove-on-bare-hand', 'glove.left#1:back', 'assistant.right:forearm')],
  ),
  run(
    'a sleeve comes up under the assistant’s arm with the probe in the hand',
    (l) => {
      l.toProbe();
      l.op.touch('left', 0, 1, () => l.op.near.gap('sleeve.left', 'bareHand'));
    },
    [alone('sleeve-on-bare-hand', 'gown#1:left.lowerSleeve', 'assistant.right:forearm')],
  ),
  run(
    'the assistant is told to let the cord go before it is covered',
    (l) => l.toProbe().letGo().ask('letGo', 5),
    [
      { rule: 'sleeve-on-bare-cord', surface: 'gown#1:left.upperSleeve', against: 'cord:{4..30}', spread: ['0 gown#1:left.upperSleeve', '0 gown#1:left.lowerSleeve'] },
      {
        rule: 'glove-on-bare-cord', surface: 'glove.left#1:cuff', against: 'cord:{4..30}',
        spread: [...['cuff', 'back', 'palm'].map((part) => `0 glove.left#1:${part}`), '1 sheath#1:{0..3}', '1 sheath#1:end'],
      },
    ],
  ),
];
