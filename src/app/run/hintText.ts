import type { RuleWords } from '../services.ts';
import type { LiveRun } from './LiveRun.ts';
import { REMEDY_ADVICE } from './words.ts';

/** One line on what to do now: the next task, or under shown coaching the answer to the newest break that stands. */
export function hintText({ run, coaching }: Pick<LiveRun, 'run' | 'coaching'>, ruleWords: (rule: string) => RuleWords): string {
  const standing = coaching === 'shown' && !run.remedy ? run.breaks.filter((broken) => broken.remediedStep === null).at(-1) : undefined;
  if (!standing) return run.progress.hint;
  const remedy = ruleWords(standing.rule).remedies.find((candidate) => !standing.remedies.includes(candidate));
  const advice = remedy ? REMEDY_ADVICE[remedy] : 'look what else it reached';
  return standing.noticedStep === null ? `Stop. Say so, then ${advice}.` : `Stop: ${advice}.`;
}
