import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { ChallengeReport } from '../../core/run/result.ts';
import type { LiveRun } from './LiveRun.ts';

/** How long words of the assistant that nobody answers stay on the screen. */
const SHOWN_S = 12;

/** What the assistant said last and nobody has answered yet, or null. */
export function openChallenge({ run }: Pick<LiveRun, 'run'>): ChallengeReport | null {
  const last = run.challenges.at(-1);
  if (!last || last.answered) return null;
  return run.stepCount - last.said.at(-1)!.step < SHOWN_S * STEPS_PER_SECOND ? last : null;
}

/** Whether what the assistant said at that step was a challenge, which has its own place on the screen. */
export const isOfChallenge = ({ run }: Pick<LiveRun, 'run'>, atStep: number): boolean => run.challenges.some(({ said }) => said.some(({ step }) => step === atStep));
