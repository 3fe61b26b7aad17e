import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { Break } from '../../core/ledger/break.ts';
import { durationText } from '../parts/clockText.ts';
import { capital } from '../parts/sentence.ts';

export interface ChainLine {
  readonly number: number;
  readonly text: string;
}

const LINES_MAX = 4;

/** The chain of a break in words, the root first: what happened, what it went on to, and how long ago. */
export function chainLines(broken: Break, told: string, wordsOf: (surface: string) => string, nowStep: number): { readonly lines: readonly ChainLine[]; readonly more: number } {
  const lines = broken.spread.slice(0, LINES_MAX).map((spread, k) => {
    const ago = durationText((nowStep - spread.step) / STEPS_PER_SECOND);
    const text = spread.from === null ? told : `${capital(wordsOf(spread.surface))} touched ${wordsOf(spread.from)} ${ago} ago.`;
    return { number: k + 1, text };
  });
  return { lines, more: Math.max(0, broken.spread.length - LINES_MAX) };
}
