import type { BreakRun } from '../../support/breakRun.ts';
import { alone } from '../../support/breakRun.ts';
import { CRAMPED, LONG_GOWN, PASSED_BY, ROOMY, SHORT_SLEEVES, SMALL_GLOVES } from '../../support/gownRooms.ts';
import { GownWork } from '../../support/gownWork.ts';
import type { Operator } from '../../support/operator.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';

const gowning = (play: (work: GownWork) => unknown) => (op: Operator): void => void play(new GownWork(op));
const run = (what: string, room: Scenario, play: (work: GownWork) => unknown, breaks: BreakRun['breaks']): BreakRun => ({ what, room, play: gowning(play), breaks });

/** Surfaces of a whole glove. */
const whole = (glove: string): string[] => ['fingers', 'palm', 'back', 'cuff'].map((part) => `0 ${glove}:${part}`);
const EDGES = ['0 gown#1:left.edge{1..9}', '0 gown#1:right.edge{1..9}'];

/** Gowning and gloving gone wrong, each in one way. */
export const GOWN_RUNS: readonly BreakRun[] = [
  run('the folded gown is taken beside its neck', ROOMY, (work) => work.lift(0.11), [
    { rule: 'gown-on-own-skin', surface: 'gown#1:front', against: 'skin.right:hand', spread: ['0 gown#1:front', '1 wrapper#1', '2 glove.right#1:palm', '2 glove.left#1:palm'] },
  ]),
  run('a bare hand on the opened wrapper', ROOMY, ({ op }) => op.turn('left', -35).fingersTo('left', -1.82, 1.1).fingersTo('left', -1.82, 0.87, 0.1), [
    { rule: 'own-skin-on-field', surface: 'wrapper#1', against: 'skin.left:hand', spread: ['0 wrapper#1', '1 gown#1:front', '1 glove.right#1:palm', '1 glove.left#1:palm'] },
  ]),
  run('a bare hand takes a glove by its outside', ROOMY, (work) => {
    work.lift();
    const { x, y } = work.op.thing('gloveRight');
    work.op.turn('left', -35).fingersTo('left', x + 0.06, 1.3).fingersTo('left', x + 0.06, y + 0.03, 0.1).grip('left');
  }, [
    { rule: 'glove-on-own-skin', surface: 'glove.right#1:palm', against: 'skin.left:hand', spread: ['0 glove.right#1:palm', '1 wrapper#1', '2 glove.left#1:palm'] },
  ]),
  run('the folded gown slips and falls to the floor', ROOMY, (work) => work.lift().op.palmTo('right', work.x, 1.2).release('right').wait(1.5), [alone('sleeve-on-floor', 'gown#1:front', 'floor')]),
  run('the gown falls open too low', ROOMY, (work) => work.lift().fallOpen(1.12), [
    { rule: 'sleeve-on-floor', surface: 'gown#1:right.edge8', against: 'floor', spread: ['0 gown#1:right.edge{8..9}', '0 gown#1:left.edge{8..9}', '0 gown#1:hem'] },
  ]),
  run('the gown is too long to fall open at shoulder height', LONG_GOWN, (work) => work.lift().fallOpen(), [
    { rule: 'sleeve-on-floor', surface: 'gown#1:right.edge8', against: 'floor', spread: [...EDGES, '0 gown#1:hem'] },
  ]),
  run('both hands lose the open gown', ROOMY, (work) => work.lift().fallOpen().op.release('right').wait(1.5), [
    { rule: 'sleeve-on-floor', surface: 'gown#1:right.edge9', against: 'floor', spread: [...EDGES, '0 gown#1:hem'] },
  ]),
  run('the gown falls open over its table and is drawn off it', ROOMY, (work) => work.lift().op.use('right', 0.1).wait(2).palmTo('right', work.x, 1.5), [
    {
      rule: 'sleeve-on-table-edge', surface: 'gown#1:left.lowerSleeve', against: 'gownTable',
      spread: [
        '0 gown#1:left.lowerSleeve', '0 gown#1:left.knitCuff', '0 gown#1:right.lowerSleeve', '0 gown#1:right.knitCuff', '0 gown#1:left.edge{4..7}',
        '1 wrapper#1', '2 glove.right#1:palm', '2 glove.left#1:palm', '2 gown#1:right.edge{4..9}', '2 gown#1:left.edge{7..9}', '2 gown#1:hem',
      ],
    },
  ]),
  run('an empty sleeve swings against the table', ROOMY, (work) => work.lift().fallOpen().takeShoulder().op.fingersTo('right', -1.63, 1.44, 0.15).wait(0.5), [
    { rule: 'sleeve-on-table-edge', surface: 'gown#1:right.knitCuff', against: 'gownTable', spread: ['0 gown#1:right.knitCuff', '0 gown#1:right.lowerSleeve'] },
  ]),
  run('the open gown is held up as high as arms reach, where it hangs against the own clothes', ROOMY, (work) => work.lift().fallOpen().takeShoulder().holdUp(0.75).op.wait(1), [
    { rule: 'sleeve-on-own-clothes', surface: 'gown#1:right.knitCuff', against: 'clothes', spread: ['0 gown#1:right.knitCuff', '0 gown#1:left.knitCuff', '0 gown#1:hem'] },
  ]),
  run('the open gown is snatched up, and its hem swings against the own clothes', ROOMY, (work) => work.lift().fallOpen().takeShoulder().holdUp(0.65, 1.5).op.wait(1), [
    { rule: 'sleeve-on-own-clothes', surface: 'gown#1:hem', against: 'clothes', spread: ['0 gown#1:hem', '0 gown#1:right.knitCuff', '0 gown#1:left.knitCuff'] },
  ]),
  run('somebody walks into the hanging gown', PASSED_BY, (work) => work.lift().fallOpen().takeShoulder().slipIn().stretch(), [
    {
      rule: 'sleeve-on-person', surface: 'gown#1:left.lowerSleeve', against: 'person',
      spread: ['0 gown#1:left.knitCuff', '0 gown#1:left.edge{1..9}', '0 gown#1:hem', '0 gown#1:left.lowerSleeve', '0 gown#1:left.upperSleeve'],
    },
  ]),
  run('sleeves that are too short, and only one hand holds its cuff while the gown is drawn up', SHORT_SLEEVES, (work) => work.leftFingersOut(), [alone('finger-past-cuff', 'gown#1:left.knitCuff', 'skin.left:hand')]),
  run('the ties are asked for before the arms are in', ROOMY, (work) => work.lift().fallOpen().takeShoulder().op.send({ type: 'ask', request: 'tieBack' }).wait(8), [
    alone('sleeve-on-bare-hand', 'gown#1:front', 'assistant.right:hand'),
  ]),
  run('a hand in its sleeve is let down', ROOMY, (work) => work.gowned().op.palmTo('left', work.x + 0.15, 0.98), [alone('sleeved-hand-low', 'gown#1:left.knitCuff', null)]),
  run('the sleeve meets the pole', CRAMPED, (work) => work.gowned().op.turn('left', -20).palmTo('left', -0.87, 1.3), [alone('sleeve-on-pole', 'gown#1:left.lowerSleeve', 'pole')]),
  run('the glove is drawn over half of the knit cuff', ROOMY, (work) => work.gowned().fetchGlove('right').lay('right').draw('right', 0.045).push('right').op.wait(0.5), [alone('cuff-shows', 'gown#1:right.knitCuff', null)]),
  run('a glove that is too small is pulled hard', SMALL_GLOVES, (work) => work.gowned().fetchGlove('right').lay('right').draw('right', 0.13, 0.5), [
    { rule: 'glove-torn', surface: 'glove.right#1:fingers', against: null, spread: [...whole('glove.right#1'), '1 gown#1:right.knitCuff', '1 gown#1:left.knitCuff'] },
  ]),
  run('a gloved hand scratches the face', ROOMY, (work) => work.gowned().glove('right').op.turn('right', 60).palmTo('right', work.x - 0.08, 1.58), [
    { rule: 'hand-on-face', surface: 'glove.right#1:fingers', against: 'face', spread: ['0 glove.right#1:fingers', '0 glove.right#1:palm', '0 glove.right#1:back'] },
  ]),
  run('the card is taken by the part that the assistant takes', ROOMY, (work) => work.gowned().glove('right').glove('left').card(0.03), [alone('glove-on-card-end', 'glove.right#1:fingers', 'tieCard#1:far')]),
  run('the card is asked for and not held out', ROOMY, (work) => work.gowned().glove('right').glove('left').passCard(), [alone('sleeve-on-bare-hand', 'gown#1:front', 'assistant.right:hand')]),
  run('hands wait below the waist', ROOMY, (work) => {
    work.dressed().waitTogether(1);
    work.op.palmsTo([['right', work.x - 0.15, 0.98], ['left', work.x + 0.15, 0.98]]);
  }, [
    { rule: 'hand-below-field', surface: 'glove.right#1:fingers', against: null, spread: whole('glove.right#1') },
    { rule: 'hand-below-field', surface: 'glove.left#1:fingers', against: null, spread: whole('glove.left#1') },
  ]),
  run('a hand is tucked under the other arm while waiting', ROOMY, (work) => {
    work.dressed();
    work.op.fingersTo('right', work.x + 0.17, work.shoulderM - 0.13).grip('right').wait(0.5);
  }, [{ rule: 'hand-in-armpit', surface: 'glove.right#1:fingers', against: null, spread: whole('glove.right#1') }]),
];
