import type { Reach } from '../ledger/surface.ts';
import { listed } from './surfaceWords.ts';
import type { Spared, WhatIfOutcome } from './whatIfTypes.ts';

const REACH_WORDS: Readonly<Record<Reach, string>> = { none: 'no further', field: 'the field', device: 'the device', site: 'the site' };

/** What a change would have come to: "The probe sheath and the site stay sterile. Reach: the field." */
export function outcomeWords({ breaks, reach, spared, stillSpoiled, newlySpoiled }: WhatIfOutcome): string {
  if (breaks.length === 0) return 'Nothing loses its sterility.';
  const lost = new Set(stillSpoiled.map(({ thing }) => thing));
  const whole = spared.filter(({ thing }) => !lost.has(thing));
  const sentences = [spared.length === 0 ? 'Nothing more stays sterile.' : whole.length > 0 ? fateWords(whole, 'stays', 'stay', 'sterile') : 'Less of the same things loses its sterility.'];
  if (newlySpoiled.length > 0) sentences.push(fateWords(newlySpoiled, 'becomes', 'become', 'unsterile instead'));
  return [...sentences, `Reach: ${REACH_WORDS[reach]}.`].join(' ');
}

function fateWords(surfaces: readonly Spared[], one: string, many: string, what: string): string {
  const things = new Set(surfaces.map(({ prose }) => prose));
  const text = `${listed([...things])} ${things.size === 1 ? one : many} ${what}.`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
