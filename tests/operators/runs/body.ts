import { alone, type BreakRun } from '../../support/breakRun.ts';
import type { Operator } from '../../support/operator.ts';
import { TOUCH_ONLY } from '../../support/rooms.ts';

/** Raises the hand toward the face until what is named touches it. */
const toFace = (op: Operator, side: 'left' | 'right', what: string): Operator => op.touch(side, side === 'right' ? 0.6 : -0.6, 0.8, () => op.near.gap(what, 'face'));
/** The left hand tugs the drape up from the skin and holds it there. */
const peel = (op: Operator): Operator => op.turn('left', -50).palmTo('left', 0.13, 1.3).fingersTo('left', 0.07, 1.1, 0.1).grip('left').fingersTo('left', 0.09, 1.3, 0.05).wait(0.5);

/** The operator's own face and arms, and the patient's skin. */
export const BODY_RUNS: readonly BreakRun[] = [
  {
    what: 'scratching an itching nose',
    play: (op) => toFace(op.palmTo('right', -0.25, 1.5), 'right', 'glove.right').palmTo('right', -0.27, 1.3),
    breaks: [alone('hand-on-face', 'glove.right#1:fingers', 'face', { severity: 'major' })],
  },
  {
    what: 'gel packet held to the mask',
    play: (op) => toFace(op.turn('right', -40).take('right', 'gel').palmTo('right', -0.25, 1.5), 'right', 'gel').palmTo('right', -0.27, 1.4),
    breaks: [alone('item-on-face', 'gel#1:body', 'face', { spread: ['0 gel#1:body', '1 glove.right#1:fingers'] })],
  },
  {
    what: 'probe held to the mask',
    play: (op) => toFace(op.turn('left', -50).take('left', 'probe').palmTo('left', 0.25, 1.4), 'left', 'sheath:probe').palmTo('left', 0.27, 1.4),
    breaks: [alone('sheath-on-face', 'sheath#1:probe', 'face', { spread: ['0 sheath#1:probe', '1 glove.left#1:fingers', '2 sheath#1:{0..6}'], severity: 'critical' })],
  },
  {
    what: 'upper sleeve on the field',
    room: TOUCH_ONLY,
    play: (op) => op.palmTo('left', 0.08, 1.3).touch('left', -1, 0, () => op.near.gap('upperArm.left', 'drapeTop')).palmTo('left', 0.25, 1.27),
    // The elbow, which is sterile, rests on the field meanwhile and carries it on to the drape under it.
    breaks: [
      alone('body-on-field', 'drape.left#1:{0..2}', 'gown#1:left.outerSleeve', {
        spread: ['0 drape.left#1:{0..2}', '1 gown#1:left.upperSleeve', '2 drape.left#1:{0..42}'], severity: 'major',
      }),
    ],
  },
  {
    what: 'the drape is peeled off and a glove comes down on the skin that was under it',
    room: 'restless-patient-head-down',
    play: (op) => {
      peel(op).turn('right', -25).fingersTo('right', 0.02, 1.18).fingersTo('right', 0.066, 1.14, 0.1);
      op.touch('right', 0, -1, () => op.near.gap('glove.right', 'patientSkin')).palmTo('right', -0.1, 1.3);
    },
    // The fingers lie on the edge of the prepared skin as well.
    breaks: [
      { rule: 'drape-slid-away', surface: 'site#1:13', against: null, spread: [] },
      alone('glove-on-skin', 'glove.right#1:fingers', 'patient:{19..21}', { spread: ['0 glove.right#1:fingers', '1 site#1:{17..18}'], severity: 'critical' }),
    ],
  },
];
