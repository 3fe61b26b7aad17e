import type { Break } from '../ledger/break.ts';
import { ruleById } from '../ledger/rules/ruleBook.ts';

type Told = Pick<Break, 'rule' | 'surface' | 'against'>;

/** First words: what was seen, as a question. `wordsOf` names a surface. */
export const questionOf = (broken: Told, wordsOf: (surface: string) => string): string => `“Stop, please. Did I see that right: ${seen(broken, wordsOf)}?”`;

/** Second words, when nobody answered the first: the concern with its reason. */
export const reasonOf = (broken: Told, wordsOf: (surface: string) => string): string => `“I am concerned: ${seen(broken, wordsOf)}. ${ruleById(broken.rule).statement}”`;

/** Part and thing, as the rule tells it, without its full stop: nobody measures by eye, and one's own hand is “mine”. */
function seen({ rule, surface, against }: Told, wordsOf: (surface: string) => string): string {
  const { sentence } = ruleById(rule);
  const told = sentence.replace(/\.$/, '').replace('{surface}', wordsOf(surface)).replace('{against}', against === null ? 'something unsterile' : wordsOf(against));
  return told.replaceAll(/,? \d+ cm from the \w+/g, '').replaceAll(/(the )?assistant's/g, 'my');
}
