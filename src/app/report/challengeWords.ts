import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { ChallengeReport, RunResult } from '../../core/run/result.ts';
import { durationText } from '../parts/clockText.ts';

/** How someone who was spoken to should answer (common practice): hands still, thanked, put right. */
export function answerWords({ step, answered, said, stillInTime }: ChallengeReport): string {
  if (!answered) return said.length > 1 ? 'Said twice; you did not answer.' : 'You did not answer.';
  const after = durationText((answered.step - step) / STEPS_PER_SECOND);
  const how = answered.how === 'stop' ? `You thanked and stopped after ${after}` : `You said that it is fine, after ${after}`;
  return `${how}; your hands ${stillInTime ? 'were still within 2 s' : 'went on'}.`;
}

/** Whether the break was put right afterwards. */
export function afterwardsWords({ break: number }: ChallengeReport, { breaks }: RunResult): string {
  return breaks[number - 1]?.remediedStep === null ? 'It was left open.' : 'It was put right.';
}
