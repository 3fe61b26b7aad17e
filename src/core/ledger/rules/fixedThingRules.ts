import type { SurfaceKind } from '../surface.ts';
import type { Rule } from './rule.ts';
import { FIELD } from './kinds.ts';
import { commonBreaks } from './sources.ts';
import { stationsWith, SUBJECTS } from './subjects.ts';

const PLACES: readonly { readonly id: string; readonly kind: SurfaceKind; readonly words: string }[] = [
  { id: 'rail', kind: 'rail', words: 'a bed rail' },
  { id: 'pole', kind: 'pole', words: 'the pole' },
  { id: 'machine', kind: 'machine', words: 'the ultrasound machine' },
  { id: 'bed', kind: 'bed', words: 'bare bed' },
  { id: 'table-edge', kind: 'tableEdge', words: 'the side of the table' },
  { id: 'floor', kind: 'floor', words: 'the floor' },
  { id: 'bin', kind: 'bin', words: 'the bin' },
  { id: 'person', kind: 'person', words: 'somebody who passes by' },
];

/** An item that lies on the floor or in the bin is lost, not a break; it becomes one when it is taken back. */
const isLost = (subject: string, place: string): boolean => subject === 'item' && (place === 'floor' || place === 'bin');

/** Glove, sleeve, sheath or item against the fixed things of the room. */
const againstFixedThings: readonly Rule[] = SUBJECTS.flatMap((subject) =>
  PLACES.filter((place) => !isLost(subject.id, place.id)).map(
    (place): Rule => ({
      id: `${subject.id}-on-${place.id}`,
      title: `${subject.words} on ${place.words}`,
      statement: `${subject.words} that touches ${place.words} is no longer sterile: sterile touches only sterile.`,
      sentence: '{surface} on the {against}.',
      triggers: [{ kind: 'touch', surfaces: subject.kinds, against: [place.kind], because: 'nature' }],
      values: [],
      severity: 'major',
      remedies: subject.remedies,
      source: commonBreaks,
      mark: 'memory',
      stations: stationsWith(subject),
    }),
  ),
);

const fieldOnFixedThing: Rule = {
  id: 'field-on-fixed-thing',
  title: 'The top of the field against something bare',
  statement: 'The upper side of a drape, a cover or the table that meets rail, pole, machine, bed, floor, bin or a passer-by on the field is no longer sterile.',
  sentence: '{surface} against the {against}.',
  triggers: [{ kind: 'touch', surfaces: FIELD, against: PLACES.map((place) => place.kind), because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['coverDrape'],
  source: 'common practice',
  mark: 'memory',
  stations: ['sheath', 'field'],
};

export const FIXED_THING_RULES: readonly Rule[] = [...againstFixedThings, fieldOnFixedThing];
