import type { RunFile } from '../core/recording/recording.ts';
import type { Score } from '../core/scoring/score.ts';
import { missingForScore } from '../core/scoring/scoreRun.ts';
import { listed } from '../core/scoring/words.ts';

/** Verdict, total and parts of a run, a line each, or why there is no score; nothing for a run that was broken off. */
export function scoreLines({ result, score, header }: RunFile): string[] {
  if (score) return [headline(score), ...score.parts.map(({ words, points, of }) => `    ${words}: ${points} of ${of}`)];
  if (result === null) return [];
  const missing = missingForScore(result, header.scenario);
  return missing.length === 0 ? [] : [`  no score: ${listed(missing)} ${missing.length === 1 ? 'was' : 'were'} not measured yet when this run was saved`];
}

function headline({ verdict, total, standard, reasons }: Score): string {
  const against = reasons.filter(({ holds }) => !holds).map(({ words }) => words);
  return `  ${verdict === 'met' ? 'met' : 'not yet'}, ${total} of 100 (standard ${standard})${against.length > 0 ? `. ${against.join(' ')}` : ''}`;
}
