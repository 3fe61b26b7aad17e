import { describe, expect, it } from 'vitest';
import { FIELD_TASKS, SHEATH_TASKS } from '../../../src/core/procedure/observation.ts';
import { resultSchema } from '../../../src/core/recording/resultSchema.ts';
import { runWith, task } from '../scoring/scoredRun.ts';

describe('The shape of a result', () => {
  it('holds the tasks of every station', () => {
    const result = runWith({ tasks: [...SHEATH_TASKS, ...FIELD_TASKS].map((id) => task(id, 1200, 'laidDown')) });
    expect(resultSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
  });

  it('holds no task that there is not', () => {
    const result = JSON.parse(JSON.stringify(runWith())) as { progress: { current: string } };
    result.progress.current = 'dressing';
    expect(resultSchema.safeParse(result).success).toBe(false);
  });
});
