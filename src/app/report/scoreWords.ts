import type { RunFile } from '../../core/recording/recording.ts';
import type { Score, ScoreLine } from '../../core/scoring/score.ts';
import { durationText } from '../parts/clockText.ts';

/** The verdict in words. */
export const verdictWords = ({ verdict }: Pick<Score, 'verdict'>): string => (verdict === 'met' ? 'Met' : 'Not yet');

/** Why a run has no verdict. */
export const unscoredWords = ({ result }: Pick<RunFile, 'result'>): string =>
  result === null ? 'This run was broken off before its end, so it has no verdict and no score.' : 'This run is from before runs were scored, and what a score weighs was not measured in it: it has no verdict.';

/** A number with a true minus. */
export const numberText = (value: number): string => String(value).replace('-', '−');

/** The value of a line: "3 of 5", "12.4 cm", "2 min 5 s", "done", or a dash where there was nothing to measure. */
export function valueText({ value, unit }: Pick<ScoreLine, 'value' | 'unit'>): string {
  if (value === null) return '–';
  if (unit === 'done') return value === 1 ? 'done' : 'not done';
  if (unit === 's') return durationText(value);
  return unit === '' ? numberText(value) : `${numberText(value)} ${unit}`;
}

/** Points earned of points to earn, or nothing for a number that is only told. */
export const pointsText = ({ points, of }: { readonly points: number | null; readonly of: number | null }): string => (points === null || of === null ? '' : `${numberText(points)} of ${numberText(of)}`);

/** The exact interval beside a rate, or nothing. */
export const intervalText = ({ interval }: Pick<ScoreLine, 'interval'>): string => (interval ? `95 % interval ${numberText(interval[0])} to ${numberText(interval[1])}` : '');
