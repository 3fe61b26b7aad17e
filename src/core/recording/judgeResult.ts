import type { RunResult } from '../run/result.ts';
import type { Score } from '../scoring/score.ts';
import { RUBRIC_VERSION, scoreOf } from '../scoring/scoreRun.ts';
import { differences } from './differences.ts';
import type { RunFile } from './recording.ts';
import type { Verification } from './verifyRun.ts';

/** Whether what is written in a recording, its result and its score, is what followed when it was played again to its end. */
export function judgeResult(written: RunResult, { score, header }: RunFile, replayed: RunResult): Verification {
  // What was not measured when the run was saved cannot be compared.
  const comparable = written.handling.measured === null ? { ...replayed, handling: { ...replayed.handling, measured: null } } : replayed;
  const found = differences(written, comparable);
  if (found.length > 0) return { verdict: 'resultDiffers', differences: found };
  if (score === null) return { verdict: 'verified' };
  if (score.rubricVersion !== RUBRIC_VERSION) return { verdict: 'otherRubric', rubricVersion: score.rubricVersion };
  const follows = scoreOf(written, header.scenario);
  const amiss = differences(withoutWords(score), follows && withoutWords(follows));
  return amiss.length > 0 ? { verdict: 'scoreDiffers', differences: amiss } : { verdict: 'verified' };
}

/** A score is its numbers and what they rest on; how that is put in words may change. */
const withoutWords = (score: Score): unknown => JSON.parse(JSON.stringify(score, (key, value: unknown) => (key === 'words' ? undefined : value)));
