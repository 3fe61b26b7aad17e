import { clock } from '../core/recording/clock.ts';
import { SIMULATION_VERSION } from '../core/recording/simulationVersion.ts';
import { RUBRIC_VERSION } from '../core/scoring/scoreRun.ts';
import type { Verification } from '../core/recording/verifyRun.ts';

/** What a verification came to, in a word for the line and in a clause that explains it. */
export function verdictWords(verification: Verification): { readonly word: string; readonly clause: string } {
  switch (verification.verdict) {
    case 'verified':
      return { word: 'verified', clause: 'its result follows from its recording, bit for bit' };
    case 'diverged': {
      const at = `${clock(verification.firstDivergentStep)} (step ${verification.firstDivergentStep})`;
      return { word: 'DIVERGED', clause: `playing it again does not lead where it says, found at ${at}${verification.fault ? `: ${verification.fault}` : ''}` };
    }
    case 'resultDiffers': {
      const { path, written, replayed } = verification.differences[0]!;
      const more = verification.differences.length > 1 ? `, and ${verification.differences.length - 1} more` : '';
      return { word: 'RESULT DIFFERS', clause: `its result does not follow from its recording: ${path} is ${written}, playing it again gives ${replayed}${more}` };
    }
    case 'scoreDiffers': {
      const { path, written, replayed } = verification.differences[0]!;
      return { word: 'SCORE DIFFERS', clause: `its result follows from its recording, its score does not: ${path} is ${written}, the rubric gives ${replayed}` };
    }
    case 'otherRubric':
      return { word: 'score not verifiable', clause: `its result follows from its recording; its score was given under scoring rules ${verification.rubricVersion}, these are ${RUBRIC_VERSION}` };
    case 'otherSimulation':
      return { word: 'not verifiable', clause: `it was recorded under simulation ${verification.simulation}, this is ${SIMULATION_VERSION}; it can be looked at` };
    case 'brokenOff':
      return { word: 'broken off', clause: `it stops at ${clock(verification.steps)} without a result; as far as it goes, playing it again agrees` };
  }
}
