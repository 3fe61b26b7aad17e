import type { NoticingOfRun } from '../../core/scoring/noticing/noticing.ts';
import { durationText } from '../parts/clockText.ts';
import { counted } from '../parts/sentence.ts';
import { numberText } from './scoreWords.ts';

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** How well breaks were noticed, one sentence each, with intervals. */
export function noticingWords({ sensitivity, falseReports, remediedUnsaid, medianS, trials, discrimination }: NoticingOfRun): readonly string[] {
  const { count, of, share, low, high } = sensitivity;
  const leftAlone = trials.filter(({ outcome }) => outcome === 'leftAlone').length;
  const counting = trials.filter(({ outcome }) => outcome === 'leftAlone' || outcome === 'falseAlarm').length;
  return [
    share === null ? 'There was no break to notice.' : `${count} of ${counted(of, 'break')} said: ${percent(share)}, 95 % interval ${percent(low)} to ${percent(high)}.`,
    ...(share === null ? [] : [medianS === null ? 'Fewer than half were ever said, so there is no middle time to it.' : `Half of them were said within ${durationText(medianS)}.`]),
    ...(remediedUnsaid.length > 0 ? [`${counted(remediedUnsaid.length, 'break was', 'breaks were')} put right without a word; that does not count as said.`] : []),
    falseReports.length === 0 ? 'Nothing was reported that was not so.' : `${counted(falseReports.length, 'report')} answered no break; that costs nothing.`,
    ...(trials.length > 0 ? [`${leftAlone} of ${counting} look-alikes that count were left alone.`] : []),
    ...(discrimination ? [`Told apart with d′ ${numberText(hundredths(discrimination.dPrime))}, criterion ${numberText(hundredths(discrimination.criterion))} (log-linear correction; one run says little).`] : []),
  ];
}

const hundredths = (value: number): number => Math.round(value * 100) / 100;
