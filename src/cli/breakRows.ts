import type { Break } from '../core/ledger/break.ts';
import { breakWords } from '../core/ledger/breakWords.ts';
import { RULE_BOOK } from '../core/ledger/rules/ruleBook.ts';
import { clock } from '../core/recording/clock.ts';
import type { RunResult } from '../core/run/result.ts';

/** A break of a run as a person reads it. */
export interface BreakRow {
  readonly number: number;
  readonly at: string;
  readonly severity: string;
  readonly reach: string;
  readonly words: string;
  /** When the operator said so, or "no". */
  readonly noticed: string;
  readonly remedied: string;
}

/** The breaks of a result, in order. */
export const breakRows = (result: RunResult): BreakRow[] =>
  result.breaks.map((known) => ({
    number: known.number,
    at: clock(known.step),
    severity: known.severity,
    reach: known.reach,
    words: sentence(known, result.words),
    noticed: known.noticedStep === null ? 'no' : clock(known.noticedStep),
    remedied: known.remediedStep === null ? 'no' : clock(known.remediedStep),
  }));

/** A file of another simulation may name a rule that this rule book does not have. */
const sentence = (known: Break, words: RunResult['words']): string =>
  RULE_BOOK.some(({ id }) => id === known.rule) ? breakWords(known, words) : `${words[known.surface] ?? known.surface}: ${known.rule}`;
