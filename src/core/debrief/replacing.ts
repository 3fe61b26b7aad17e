import type { Fact } from '../ledger/fact.ts';
import type { Surface } from '../ledger/surface.ts';

/** Name of the thing that takes another's place after an inserted remedy. */
export const freshThing = (thing: string): string => `${thing}~`;

/** The fresh surface that takes another's place. */
export function freshSurface(surface: Surface): Surface {
  const thing = freshThing(surface.thing);
  return { ...surface, id: `${thing}:${surface.part}`, thing, initial: surface.role === 'prepared' ? 'prepared' : 'sterile' };
}

/** What is handed on new to the field: it does not lie where the old one had fallen. */
export const isHandedOn = (surface: Surface | undefined): boolean => surface?.kind === 'item' || surface?.kind === 'needle';

/** A fact under its new names; the very same where it has none. */
export function renamedFact(fact: Fact, surface: (id: string) => string, thing: (name: string) => string, touch: (number: number) => number): Fact {
  switch (fact.kind) {
    case 'touch.began': {
      const [a, b] = [surface(fact.a), surface(fact.b)];
      return a === fact.a && b === fact.b ? fact : { ...fact, a, b };
    }
    case 'touch.ended': {
      const number = touch(fact.touch);
      return number === fact.touch ? fact : { ...fact, touch: number };
    }
    case 'surface.retired':
    case 'zone.entered':
    case 'zone.left':
    case 'torn':
    case 'glove.torn':
      return { ...fact, surface: surface(fact.surface) };
    case 'gelled':
      return { ...fact, surface: surface(fact.surface), gel: surface(fact.gel) };
    case 'used':
      return { ...fact, surface: surface(fact.surface), site: surface(fact.site) };
    case 'drape.drifted':
      return { ...fact, drape: surface(thing(fact.drape)), site: surface(fact.site) };
    case 'remedied':
      return { ...fact, things: fact.things.map(thing) };
    case 'surface.added':
    case 'noticed':
      return fact;
  }
}
