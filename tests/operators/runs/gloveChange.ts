import type { Scenario } from '../../../src/core/scenario/schema.ts';
import { alone, type BreakRun } from '../../support/breakRun.ts';
import { BY_HAND_AT_BED, ROOMY, SHORT_SLEEVES, TIGHT_GLOVES } from '../../support/gownRooms.ts';
import { GownWork } from '../../support/gownWork.ts';

const run = (what: string, room: Scenario, play: (work: GownWork) => unknown, breaks: BreakRun['breaks'], after: BreakRun['after'] = () => {}): BreakRun => ({
  what, room, play: (op) => void play(new GownWork(op)), breaks, after,
});

/** Open gloving, and changing a glove later, gone wrong each in one way. */
export const GLOVE_CHANGE_RUNS: readonly BreakRun[] = [
  run('the bare hand misses the mouth of its new glove', ROOMY, (work) => work.dressed().changeGlove('right').hangGlove('right').slipIntoGlove('right', 0.045), [
    { rule: 'glove-on-own-skin', surface: 'glove.right#2:palm', against: 'skin.right:hand', spread: ['0 glove.right#2:palm', '1 glove.left#1:fingers'] },
  ]),
  run('gloved fingers take the new glove over the edge of its turned-back cuff', ROOMY, (work) => work.dressed().changeGlove('left').hangGlove('left', 0.04), [
    { rule: 'glove-inside-out', surface: 'glove.right#1:fingers', against: 'glove.left#2:turnedBack', spread: ['0 glove.right#1:fingers', '1 wrapper#1', '2 glove.left#2:palm'] },
  ]),
  run('bare fingers take the new glove by its outside', ROOMY, (work) => work.dressed().changeGlove('right').changeGlove('left').hangGlove('right', -0.07), [
    { rule: 'glove-on-own-skin', surface: 'glove.right#2:palm', against: 'skin.left:hand', spread: ['0 glove.right#2:palm', '1 wrapper#1', '2 glove.left#2:palm'] },
  ]),
  run('bare fingers draw the cuff of the new glove', ROOMY, (work) => work.dressed().changeGlove('right').changeGlove('left').hangGlove('right').slipIntoGlove('right').coverCuff('right'), [
    alone('glove-on-own-skin', 'glove.right#2:cuff', 'skin.left:hand'),
  ]),
  {
    what: 'the cuff of a new glove is left turned back, and the knit cuff meets the drape', room: BY_HAND_AT_BED,
    play: (op) => {
      GownWork.changedAtBed(op, 'right', (work) => work.hangGlove('right').slipIntoGlove('right').op.release('left').turn('right', 0));
      op.turn('right', 30).palmTo('right', -0.25, 1.05, 0.1);
    },
    breaks: [
      {
        rule: 'passed-cuff-met', surface: 'drape.right#1:17', against: 'gown#1:right.passedCuff',
        spread: ['0 drape.right#1:17', '1 gown#1:right.lowerSleeve', '2 drape.right#1:{18..20}', '2 drape.right#1:16'],
      },
    ],
  },
  run('a hand goes too fast into a glove that is too small', TIGHT_GLOVES, ({ op }) => {
    const work = new GownWork(op);
    work.gowned().glove('right').glove('left').card().changeGlove('right').hangGlove('right');
    const [x, y] = work.tips('left');
    op.turn('right', -90).fingersTo('right', x, y + 0.1).fingersTo('right', x, y - 0.14, 0.6);
  }, [
    { rule: 'glove-torn', surface: 'glove.right#2:fingers', against: null, spread: ['fingers', 'palm', 'back', 'cuff'].map((part) => `0 glove.right#2:${part}`).concat('1 glove.left#1:fingers') },
  ]),
  run('a finger out of its cuff, gloved by the open method afterwards', SHORT_SLEEVES, (work) => work.leftFingersOut().push('left').push('left').openGlove('left').glove('right').card().waitTogether(11), [
    alone('finger-past-cuff', 'gown#1:left.knitCuff', 'skin.left:hand'),
  ]),
];
