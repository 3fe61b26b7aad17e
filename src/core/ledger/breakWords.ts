import type { Break } from './break.ts';
import { ruleById } from './rules/ruleBook.ts';

/** One short sentence about a break, such as "Left glove, fingers on the right rail."; `words` names the surfaces by id. */
export function breakWords(known: Break, words: Readonly<Record<string, string>>): string {
  const named = (id: string | null): string => (id === null ? '' : (words[id] ?? id));
  const sentence = ruleById(known.rule).sentence.replace('{surface}', named(known.surface)).replace('{against}', named(known.against));
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
