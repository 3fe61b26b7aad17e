import { describe, expect, it } from 'vitest';
import { expectBreaks } from '../support/expectBreaks.ts';
import { runOperator } from '../support/runOperator.ts';

describe('The drape: one mistake is one break', () => {
  it('glove on the margin that hangs over the rail', () => {
    const { result } = runOperator((op) => {
      op.palmTo('right', -0.4, 1.45).palmTo('right', -0.49, 1.45).touch('right', 0, -1, () => op.near.gap('glove.right', 'margin.right')).palmTo('right', -0.45, 1.45);
    });
    expectBreaks(result, [{ rule: 'glove-on-margin', surface: 'glove.right#1:palm', against: 'drape.right#1:{31..36}', spread: ['0 glove.right#1:palm'], severity: 'major' }]);
  });

  it('needle dragged over the margin', () => {
    const { result } = runOperator((op) => {
      op.palmTo('right', -0.3, 1.45).palmTo('right', -0.75, 1.45).turn('right', -30).take('right', 'needle').palmTo('right', -0.72, 1.45).palmTo('right', -0.565, 1.45);
      op.touch('right', 0, -1, () => op.near.gap('needle', 'margin.right')).palmTo('right', -0.565, 1.5);
    });
    const spread = ['0 needle#1:needle', '1 drape.right#1:{28..32}'];
    expectBreaks(result, [{ rule: 'item-on-margin', surface: 'needle#1:needle', against: 'drape.right#1:{31..36}', spread, severity: 'critical' }]);
  });

  it('probe laid on the margin', () => {
    const { result } = runOperator((op) => {
      op.turn('left', -50).take('left', 'probe').palmTo('left', 0.3, 1.4).palmTo('left', 0.485, 1.45).touch('left', 0, -1, () => op.near.gap('sheath:probe', 'margin.left')).palmTo('left', 0.3, 1.4);
    });
    const spread = ['0 sheath#1:probe', '1 drape.left#1:{34..38}', '1 glove.left#1:fingers'];
    expectBreaks(result, [{ rule: 'sheath-on-margin', surface: 'sheath#1:probe', against: 'drape.left#1:{34..42}', spread, severity: 'critical' }]);
  });

  it('a tug upward peels the drape off and bares unprepared skin', () => {
    const { run, result } = runOperator((op) => {
      op.turn('left', -50).palmTo('left', 0.13, 1.3).fingersTo('left', 0.07, 1.1, 0.1).grip('left').fingersTo('left', 0.09, 1.3, 0.05).wait(0.5);
      expect(op.holds('left')).toBe('drape.left');
    }, 'restless-patient-head-down');
    expectBreaks(result, [{ rule: 'drape-slid-away', surface: 'site#1:13', against: null, spread: [], severity: 'major' }]);
    expect(result.handling.driftM.left).toBeGreaterThan(run.scenario.room.patient.preparedBeyondM);
  });

  it('a tug toward the site draws the edge over it and bares the skin that it leaves', () => {
    const { run, result } = runOperator((op) => {
      op.turn('left', -50).palmTo('left', 0.15, 1.3).fingersTo('left', 0.06, 1.1, 0.1).grip('left');
      op.touch('left', -0.9, 0.45, () => (op.run.breaks.length > 0 ? 0 : 1)).release('left').wait(1);
    }, 'restless-patient-head-down');
    expectBreaks(result, [
      { rule: 'drape-slid-toward-site', surface: 'site#1:13', against: null, spread: ['0 site#1:13'], severity: 'critical' },
      { rule: 'drape-slid-away', surface: 'site#1:13', against: null, spread: [], severity: 'major' },
    ]);
    expect(result.handling.driftM.left).toBeGreaterThan(run.scenario.policy.driftTowardSiteM);
  });
});
