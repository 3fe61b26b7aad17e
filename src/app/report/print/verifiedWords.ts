import type { Verification } from '../../../core/recording/verifyRun.ts';
import { clockText } from '../../parts/clockText.ts';
import { secondsAt } from '../reportFacts.ts';

/** What is known of a recording when its report is printed, in a clause. `verification` is null when nobody checked it. */
export function verifiedWords(simulation: number, sameSimulation: boolean, verification: Verification | null): string {
  if (!sameSimulation) return `made under version ${simulation} of the simulation, cannot be verified by this one`;
  switch (verification?.verdict) {
    case undefined:
      return 'not verified before this was printed';
    case 'verified':
      return 'verified: it leads to this report bit for bit';
    case 'otherRubric':
      return `verified, but for the score, which was given under version ${verification.rubricVersion} of the scoring rules`;
    case 'brokenOff':
      return 'verified as far as it goes; broken off';
    case 'diverged':
      return `does NOT verify: goes another way from ${clockText(secondsAt(verification.firstDivergentStep))} on`;
    case 'scoreDiffers':
      return 'does NOT verify: the score is not the one that follows';
    default:
      return 'does NOT verify: the report is not the one that follows';
  }
}
