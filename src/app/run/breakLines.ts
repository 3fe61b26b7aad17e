import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { Break } from '../../core/ledger/break.ts';
import { durationText } from '../parts/clockText.ts';
import { capital } from '../parts/sentence.ts';
import { groupWords, spreadGroups } from '../parts/spreadGroups.ts';

export interface ChainLine {
  readonly number: number;
  readonly text: string;
}

const LINES_MAX = 4;

/** The chain of a break in words, the root first: what happened, what it went on to, and how long ago. */
export function chainLines(broken: Break, told: string, wordsOf: (surface: string) => string, nowStep: number): { readonly lines: readonly ChainLine[]; readonly more: number } {
  const groups = spreadGroups(broken);
  const lines = groups.slice(0, LINES_MAX).map((group, k) => {
    const name = capital(groupWords(group.surfaces, wordsOf));
    const ago = durationText((nowStep - group.step) / STEPS_PER_SECOND);
    if (k === 0) return { number: 1, text: group.surfaces.length > 1 ? `${told} In all, ${groupWords(group.surfaces, wordsOf)}.` : told };
    return { number: k + 1, text: group.from === null ? `${name} became unsterile with it.` : `${name} touched ${wordsOf(group.from)} ${ago} ago.` };
  });
  return { lines, more: Math.max(0, groups.length - LINES_MAX) };
}
