import type { Mark, PublishedSource, Seen, Source } from './sources.ts';

const SEEN_WORDS: Readonly<Record<Seen, string>> = {
  text: 'Read in a copy.',
  quoted: 'Read where others repeat it, not in the standard itself.',
  title: 'Title and abstract read, not the text.',
  notSeen: 'From memory, not read for this book.',
};

/** Where a statement comes from, in words, with how far that was checked. */
export function sourceWords(source: Source, mark: Mark): string {
  if (source === 'common practice') return mark === 'derived' ? 'Common practice, carried over from like cases; no published source.' : 'Common practice; no published source.';
  return `${citation(source)}. ${standing(source, mark)}`;
}

/** Title, body, year and recommendation of a published source. */
export const citation = ({ title, body, year, recommendation }: PublishedSource): string =>
  [title, body, year, recommendation].filter((part) => part !== null && part !== undefined).join(', ');

function standing({ seen }: PublishedSource, mark: Mark): string {
  if (mark === 'derived') return `${SEEN_WORDS[seen]} This is worked out from it.`;
  if (mark === 'memory' && seen !== 'notSeen') return `${SEEN_WORDS[seen]} This statement is from memory.`;
  return SEEN_WORDS[seen];
}
