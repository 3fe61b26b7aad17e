import type { Side } from '../base/side.ts';
import { stepsToSeconds } from '../base/time.ts';
import type { Surface } from '../ledger/surface.ts';

/** What a surface is part of as a person sees it: a sleeve of the gown, the sheath round the probe or round the cord. */
export interface Whole {
  readonly id: string;
  /** "left glove", "drape, left side". */
  readonly words: string;
  /** In a sentence: "the left glove", "the left side of the drape". */
  readonly prose: string;
}

/** The whole that a surface belongs to; its id is the thing with its generation, and for gown and sheath also the piece of it. */
export function wholeOf(surface: Surface): Whole {
  const { thing, kind } = surface;
  const named = (words: string, id = thing): Whole => ({ id, words, prose: `the ${words}` });
  const [first, second] = surface.words.split(', ') as [string, string?];
  switch (kind) {
    case 'sleeve': {
      const side = sideOf(surface);
      return side ? named(`${side} sleeve`, `${thing}:${side}`) : named(surface.words);
    }
    case 'outerSleeve':
      return named(surface.words, surface.id);
    case 'drapeTop':
    case 'drapeUnder': {
      const side = /\b(left|right) side\b/.exec(surface.words)?.[0];
      return side ? { id: thing, words: `drape, ${side}`, prose: `the ${side} of the drape` } : named(first);
    }
    case 'probeSheath':
      return named('probe sheath', `${thing}:probe`);
    case 'sheath':
    case 'sheathTail':
      return named(wasFolded(surface) ? 'sheath' : 'sheathed cord', `${thing}:cord`);
    case 'bareCord':
      return named('bare cord');
    case 'needle':
      return named(first.replace(/^needle of the /, ''));
    case 'site':
    case 'preparedSkin':
      return named('site');
    case 'face':
      return named('face');
    default:
      return named(second === undefined ? surface.words : first);
  }
}

/** Of a sheath that is loaded in the run: what is told of it may have been while it was still folded, with no cord in it. */
const wasFolded = ({ part, words }: Pick<Surface, 'part' | 'words'>): boolean => /^(sheath over|folds at) /.test(words) || /end$/i.test(part);

/** Hand or arm that a surface is of, or null. */
export function sideOf({ thing, part, kind }: Pick<Surface, 'thing' | 'part' | 'kind'>): Side | null {
  if (kind !== 'glove' && kind !== 'sleeve' && kind !== 'outerSleeve') return null;
  const named = kind === 'glove' ? thing : part;
  return /left/i.test(named) ? 'left' : /right/i.test(named) ? 'right' : null;
}

/** "the left glove", "the left glove and the site", "the left glove, the site and 3 more things"; each once. */
export function listed(words: readonly string[]): string {
  const each = [...new Set(words)];
  if (each.length <= 1) return each[0] ?? '';
  if (each.length <= 3) return `${each.slice(0, -1).join(', ')} and ${each[each.length - 1]!}`;
  return `${each.slice(0, 2).join(', ')} and ${each.length - 2} more things`;
}

/** Minutes and seconds of the run, "07:01". */
export function clockWords(step: number): string {
  const seconds = Math.floor(stepsToSeconds(step));
  return `${String(Math.floor(seconds / 60)).padStart(2, '0')}:${String(seconds % 60).padStart(2, '0')}`;
}
