import type { Break, Severity } from '../ledger/break.ts';
import { breakWords } from '../ledger/breakWords.ts';
import { RULE_BOOK } from '../ledger/rules/ruleBook.ts';
import type { RunResult } from '../run/result.ts';
import type { Rubric } from '../scenario/schema.ts';
import { hundredths } from './round.ts';
import type { EventRef } from './score.ts';

/** Rule of using something unsterile on the patient. */
const USED = 'unsterile-used-at-site';

/** A break as it is judged. */
export interface GradedBreak {
  readonly known: Break;
  /** Severity, one higher where it was said and then left while the work went on. */
  readonly grade: Severity;
  readonly said: boolean;
  readonly putRight: boolean;
  readonly ignored: boolean;
  /** Something that it had spoiled, or that was never sterile, was used at the site: nothing undoes that. */
  readonly used: boolean;
  /** Points, before minor breaks together are capped. */
  readonly cost: number;
}

const HIGHER: Readonly<Record<Severity, Severity>> = { minor: 'major', major: 'critical', critical: 'critical' };

/** Every break of a run with its grade and what it costs. */
export const gradeBreaks = (result: RunResult, rubric: Rubric): readonly GradedBreak[] => result.breaks.map((known) => grade(known, result, rubric));

function grade(known: Break, result: RunResult, { breaks, fails }: Rubric): GradedBreak {
  const said = known.noticedStep !== null;
  const putRight = known.remediedStep !== null;
  const ignored = fails.ignoredRaised && !putRight && wentOn(known, result);
  const grade = ignored ? HIGHER[known.severity] : known.severity;
  const cost = (putRight ? breaks[grade].putRight : breaks[grade].left) + (said ? 0 : breaks.unsaid);
  const used = known.rule === USED || known.escalatedBy?.includes(USED) === true;
  return { known, grade, said, putRight, ignored, used, cost };
}

/**
 * How "said and deliberately left" is read from a run: the operator said it, it was open to the end, and a further task was finished
 * after the word. Ending the run at once is not going on.
 */
const wentOn = ({ noticedStep }: Break, { progress }: RunResult): boolean =>
  noticedStep !== null && progress.tasks.some(({ doneStep }) => doneStep !== null && doneStep > noticedStep);

/** Points that all breaks cost together. */
export function costOf(graded: readonly GradedBreak[], { breaks }: Rubric): number {
  const sum = (wanted: boolean): number => graded.filter(({ grade }) => (grade === 'minor') === wanted).reduce((total, { cost }) => total + cost, 0);
  return hundredths(sum(false) + Math.min(breaks.minorAtMost, sum(true)));
}

export function breakRef({ known, grade, said, putRight, ignored, used }: GradedBreak, words: RunResult['words']): EventRef {
  const outcome = ignored ? 'said, then left as it was' : `${said ? 'said' : 'not said'}, ${putRight ? 'put right' : 'left open'}`;
  return { kind: 'break', step: known.step, number: known.number, words: `${sentence(known, words)}: ${grade}, ${outcome}${used ? ', used on the patient' : ''}` };
}

/** A file of another simulation may name a rule that this rule book does not have. */
function sentence(known: Break, words: RunResult['words']): string {
  if (!RULE_BOOK.some(({ id }) => id === known.rule)) return `${words[known.surface] ?? known.surface} (${known.rule})`;
  return breakWords(known, words).replace(/\.$/, '');
}
