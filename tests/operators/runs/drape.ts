import { expect } from 'vitest';
import { alone, type BreakRun } from '../../support/breakRun.ts';
import type { Operator } from '../../support/operator.ts';

/** The left hand takes the drape beside its opening and tugs it toward the site until that counts. */
const tugTowardSite = (op: Operator): Operator =>
  op.turn('left', -50).palmTo('left', 0.15, 1.3).fingersTo('left', 0.06, 1.1, 0.1).grip('left').touch('left', -0.9, 0.45, () => (op.run.breaks.length > 0 ? 0 : 1));
const SLID_TOWARD = alone('drape-slid-toward-site', 'site#1:13', null, { severity: 'critical' });
const SLID_AWAY = { rule: 'drape-slid-away', surface: 'site#1:13', against: null, spread: [], severity: 'major' } as const;

/** The drapes: margin and drift. */
export const DRAPE_RUNS: readonly BreakRun[] = [
  {
    what: 'glove on the margin that hangs over the rail',
    play: (op) => op.palmTo('right', -0.4, 1.45).palmTo('right', -0.49, 1.45).touch('right', 0, -1, () => op.near.gap('glove.right', 'margin.right')).palmTo('right', -0.45, 1.45),
    breaks: [alone('glove-on-margin', 'glove.right#1:palm', 'drape.right#1:{31..36}', { severity: 'major' })],
  },
  {
    what: 'needle dragged over the margin',
    play: (op) => {
      op.palmTo('right', -0.3, 1.45).palmTo('right', -0.75, 1.45).turn('right', -30).take('right', 'needle').palmTo('right', -0.72, 1.45).palmTo('right', -0.565, 1.45);
      op.touch('right', 0, -1, () => op.near.gap('needle', 'margin.right')).palmTo('right', -0.565, 1.5);
    },
    breaks: [alone('item-on-margin', 'needle#1:needle', 'drape.right#1:{31..36}', { spread: ['0 needle#1:needle', '1 drape.right#1:{28..32}'], severity: 'critical' })],
  },
  {
    what: 'probe laid on the margin',
    play: (op) => op.turn('left', -50).take('left', 'probe').palmTo('left', 0.3, 1.4).palmTo('left', 0.485, 1.45).touch('left', 0, -1, () => op.near.gap('sheath:probe', 'margin.left')).palmTo('left', 0.3, 1.4),
    breaks: [alone('sheath-on-margin', 'sheath#1:probe', 'drape.left#1:{34..42}', { spread: ['0 sheath#1:probe', '1 glove.left#1:fingers'], severity: 'critical' })],
  },
  {
    what: 'a tug upward peels the drape off and bares unprepared skin', room: 'restless-patient-head-down',
    play: (op) => {
      op.turn('left', -50).palmTo('left', 0.13, 1.3).fingersTo('left', 0.07, 1.1, 0.1).grip('left').fingersTo('left', 0.09, 1.3, 0.05).wait(0.5);
      expect(op.holds('left')).toBe('drape.left');
    },
    breaks: [SLID_AWAY],
    after: ({ run, result }) => expect(result.handling.driftM.left).toBeGreaterThan(run.scenario.room.patient.preparedBeyondM),
  },
  {
    what: 'a tug toward the site draws the edge over it, and is held there', room: 'restless-patient-head-down',
    play: (op) => tugTowardSite(op).palmTo('left', -0.05, 1.215, 0.1).wait(0.5),
    breaks: [SLID_TOWARD],
    after: ({ run, result }) => expect(result.handling.driftM.left).toBeGreaterThan(run.scenario.policy.driftTowardSiteM),
  },
  {
    what: 'let go after such a tug, the edge that no longer sticks slides off and bares skin as well', room: 'restless-patient-head-down',
    play: (op) => tugTowardSite(op).fingersTo('left', 0.02, 1.14, 0.1).release('left').wait(3),
    breaks: [SLID_TOWARD, SLID_AWAY],
  },
];
