import type { Verification } from '../../core/recording/verifyRun.ts';
import { clockText } from '../parts/clockText.ts';
import { secondsAt } from './reportFacts.ts';

/** What checking a recording came to, in one or two sentences. */
export function verificationWords(verification: Verification): { readonly good: boolean; readonly words: string } {
  switch (verification.verdict) {
    case 'verified':
      return { good: true, words: 'The recording verifies: played again, it gives this report bit for bit.' };
    case 'diverged':
      return { good: false, words: `The recording does not verify: played again, it goes another way from ${clockText(secondsAt(verification.firstDivergentStep))} on.` };
    case 'resultDiffers':
      return { good: false, words: `This report does not follow from its recording: ${verification.differences[0]?.path ?? 'the result'} is written otherwise than it was played.` };
    case 'scoreDiffers':
      return { good: false, words: `The score does not follow from this recording: ${verification.differences[0]?.path ?? 'it'} is written otherwise than the rubric gives it. The rest of the report verifies.` };
    case 'otherRubric':
      return { good: false, words: `The report verifies. Its score was given under version ${verification.rubricVersion} of the scoring rules and cannot be checked here.` };
    case 'otherSimulation':
      return { good: false, words: `Recorded under version ${verification.simulation} of the simulation. It can be looked at here, not verified.` };
    case 'brokenOff':
      return { good: true, words: 'The recording verifies as far as it goes; the run was broken off.' };
  }
}
