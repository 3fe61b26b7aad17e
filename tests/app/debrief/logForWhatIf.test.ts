import { describe, expect, it } from 'vitest';
import { logForWhatIf } from '../../../src/app/debrief/logForWhatIf.ts';
import type { RunLog } from '../../../src/core/debrief/runLog.ts';
import { runLog, SCENARIO } from '../../core/debrief/runLogs.ts';
import { breakWith } from '../support/breakWith.ts';

const opening = { kind: 'noticed', step: 0 } as const;
const played = (steps: number, complete = false): RunLog => runLog([opening], { steps, complete });
/** Begins at step 10, and gets to the site at step 50. */
const broken = breakWith({ step: 10, reach: 'site', spread: [['glove#1:palm', 10], ['site#1:4', 50]].map(([surface, step], depth) => ({ surface: String(surface), step: Number(step), depth, touch: depth, from: null })) });

describe('What-ifs of a break', () => {
  it('wait until it has got as far as it did', () => {
    expect(logForWhatIf(null, broken, null)).toBeNull();
    expect(logForWhatIf(played(50), broken, null), 'step 50 is not done').toBeNull();
    const far = played(51);
    expect(logForWhatIf(far, broken, null)).toBe(far);
    expect(logForWhatIf(far, null, null)).toBeNull();
  });

  it('then stay as they are until the whole run is there', () => {
    const [first, more, whole] = [played(60), played(400), played(900, true)];
    expect(logForWhatIf(more, broken, first)).toBe(first);
    expect(logForWhatIf(whole, broken, first)).toBe(whole);
  });

  it('of another break or another run are worked out anew', () => {
    const [first, more] = [played(60), played(400)];
    expect(logForWhatIf(more, breakWith({ step: 200, spread: [] }), first)).toBe(more);
    expect(logForWhatIf({ ...more, scenario: { ...SCENARIO } }, broken, first)).not.toBe(first);
  });
});
