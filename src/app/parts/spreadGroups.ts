import type { Break } from '../../core/ledger/break.ts';
import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import { listed } from './sentence.ts';

/** Surfaces of one thing that were reached together. */
export interface SpreadGroup {
  readonly step: number;
  readonly surfaces: readonly string[];
  /** Surface that it came from, or null at the root. */
  readonly from: string | null;
}

const thingOf = (surface: string): string => surface.slice(0, surface.indexOf(':') + 1) || surface;

/** The chain of a break in links that a person would tell apart: parts of one thing within a second, by the same way, are one. */
export function spreadGroups({ spread }: Pick<Break, 'spread'>): readonly SpreadGroup[] {
  const groups: { step: number; surfaces: string[]; from: string | null }[] = [];
  for (const { surface, step, from } of spread) {
    const same = groups.find(
      (group) =>
        thingOf(group.surfaces[0]!) === thingOf(surface) &&
        step - group.step < STEPS_PER_SECOND &&
        (from === null) === (group.from === null) &&
        (from === null || thingOf(from) === thingOf(group.from!)),
    );
    if (same) same.surfaces.push(surface);
    else groups.push({ step, surfaces: [surface], from });
  }
  return groups;
}

const PARTS_TOLD = 3;

/** Words of surfaces of one thing: "left glove: cuff, palm and fingers". */
export function groupWords(surfaces: readonly string[], wordsOf: (surface: string) => string): string {
  const words = [...new Set(surfaces.map(wordsOf))];
  const cut = words[0]!.lastIndexOf(', ');
  if (words.length === 1 || cut < 0 || !words.every((text) => text.startsWith(words[0]!.slice(0, cut + 2)))) return told(words);
  return `${words[0]!.slice(0, cut)}: ${told(words.map((text) => text.slice(cut + 2)))}`;
}

function told(words: readonly string[]): string {
  if (words.length <= PARTS_TOLD + 1) return listed(words);
  return `${words.slice(0, PARTS_TOLD).join(', ')} and ${words.length - PARTS_TOLD} more`;
}
