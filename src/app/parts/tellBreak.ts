import type { Break } from '../../core/ledger/break.ts';
import { capital } from './sentence.ts';

/** A break in one sentence: the rule's own, with the words of the surfaces in it. */
export function tellBreak(sentence: string, broken: Pick<Break, 'surface' | 'against'>, wordsOf: (surface: string) => string): string {
  return capital(sentence.replace('{surface}', wordsOf(broken.surface)).replace('{against}', broken.against === null ? 'something unsterile' : wordsOf(broken.against)));
}
