import type { DebriefSource } from '../../core/debrief/debriefSource.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import { momentText } from './timeText.ts';

/** Why what is shown may not be the run as it was, or null when it is. */
export function replayNotice(file: RunFile, source: DebriefSource | null, fault: string | null): string | null {
  if (fault !== null) return fault;
  if (source && !source.exact) {
    return `Recorded under version ${file.header.simulation} of the simulation: the room may move otherwise here than it did, and the run cannot be verified. Times and breaks are as they were saved.`;
  }
  const verification = source?.verification;
  if (verification?.verdict === 'diverged') return `Played again, this run goes another way than recorded from ${momentText(verification.firstDivergentStep)} on; what is shown after that is not what was saved.`;
  if (verification?.verdict === 'resultDiffers') return 'The saved report does not follow from this recording. What is shown here is what the recording comes to.';
  return null;
}
