import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { Break } from '../../core/ledger/break.ts';
import type { Reach } from '../../core/ledger/surface.ts';
import type { RunResult } from '../../core/run/result.ts';
import { durationText } from '../parts/clockText.ts';
import { counted, listed } from '../parts/sentence.ts';
import { groupWords, spreadGroups } from '../parts/spreadGroups.ts';
import { REMEDY_SENTENCES } from '../run/words.ts';

export const secondsAt = (step: number): number => step / STEPS_PER_SECOND;

const REACH_WORDS: Readonly<Record<Reach, string>> = {
  none: 'it reached nothing else',
  field: 'it reached the field',
  device: 'it reached the device',
  site: 'it reached the site',
};

/** How far a break got. */
export const reachWords = (broken: Break): string => REACH_WORDS[broken.reach];

/** Whether and when the operator said so. */
export function noticedWords(broken: Break): string {
  if (broken.noticedStep === null) return 'not noticed';
  const after = (broken.noticedStep - broken.step) / STEPS_PER_SECOND;
  return after < 1 ? 'noticed at once' : `noticed after ${durationText(after)}`;
}

/** What was done about it. */
export function remediedWords(broken: Break): string {
  const done = listed(broken.remedies.map((remedy) => REMEDY_SENTENCES[remedy]));
  if (broken.remediedStep === null) return done === '' ? 'not remedied' : `remedied in part: ${done}`;
  const after = durationText((broken.remediedStep - broken.step) / STEPS_PER_SECOND);
  return done === '' ? `remedied after ${after}` : `remedied after ${after}: ${done}`;
}

export interface ChainRow {
  readonly number: number;
  readonly step: number;
  readonly surface: string;
  readonly how: string;
}

/** The chain of a break from the root to all that it reached. */
export function chainRows(broken: Break, words: Readonly<Record<string, string>>): readonly ChainRow[] {
  const wordsOf = (id: string): string => words[id] ?? id;
  return spreadGroups(broken).map(({ step, surfaces, from }, k) => ({
    number: k + 1,
    step,
    surface: groupWords(surfaces, wordsOf),
    how: from !== null ? `touched ${wordsOf(from)}` : broken.against !== null ? `met ${wordsOf(broken.against)}` : 'root',
  }));
}

/** One sentence over everything, without a verdict. */
export function summaryWords({ breaks, notices }: RunResult): string {
  if (breaks.length === 0) return notices.length === 0 ? 'No break of sterility.' : `No break of sterility; ${counted(notices.length, 'notice')} had nothing to answer.`;
  const noticed = breaks.filter((broken) => broken.noticedStep !== null).length;
  const remedied = breaks.filter((broken) => broken.remediedStep !== null).length;
  return `${counted(breaks.length, 'break')}: ${noticed} noticed, ${remedied} remedied.`;
}

/** "1.24 m", "3.1 cm", "4 mm": a length in the unit in which one would say it. */
export function lengthText(metres: number): string {
  if (metres >= 1) return `${metres.toFixed(1)} m`;
  if (metres >= 0.01) return `${(metres * 100).toFixed(1)} cm`;
  return `${(metres * 1000).toFixed(0)} mm`;
}

/** Share as a whole percentage, or a dash where there is none. */
export const shareText = (share: number | null): string => (share === null ? 'never at the site' : `${Math.round(share * 100)} %`);
