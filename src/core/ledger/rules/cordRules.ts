import type { Rule } from './rule.ts';
import { FIELD, GLOVE, GOWN, ITEM, PREPARED, SHEATH } from './kinds.ts';
import { probeCover } from './sources.ts';
import { SUBJECTS } from './subjects.ts';

const againstBareCord: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-bare-cord`,
  title: `${subject.words} on bare cord`,
  statement: `Only the outside of the sheath is sterile; ${subject.words.toLowerCase()} that touches cord beyond it is spoiled.`,
  sentence: '{surface} on the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['bareCord'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: subject.remedies,
  source: probeCover,
  mark: 'derived',
  stations: ['sheath', 'field'],
}));

const TAIL = {
  name: 'tail of the sheath that does not count as sterile',
  value: 0.15,
  unit: 'm',
  policy: 'sheathTailM',
} as const;

const againstTail: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-sheath-tail`,
  title: `${subject.words} on the tail of the sheath`,
  statement: `The assistant drew the sheath along the cord by its open end, so its last part does not count as sterile; ${subject.words.toLowerCase()} that touches it is spoiled.`,
  sentence: '{surface} on the {against}.',
  // The sheath's own stretches lie next to its tail.
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['sheathTail'], because: 'nature', otherThing: true }],
  values: [TAIL],
  severity: 'major',
  remedies: subject.remedies,
  source: 'common practice',
  mark: 'memory',
  stations: ['sheath', 'field'],
}));

const cordOnField: Rule = {
  id: 'cord-on-field',
  title: 'Bare cord on the field',
  statement: 'Cord beyond the sheath must stay off the field; where it lies, the field is covered and what it touched is replaced.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: FIELD, against: ['bareCord'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['coverDrape', 'replaceItem'],
  source: 'common practice',
  mark: 'memory',
  stations: ['sheath', 'field'],
};

const tailOnField: Rule = {
  id: 'tail-on-field',
  title: 'Tail of the sheath on the field',
  statement: 'The open end of the sheath was in the assistant’s hand; it must stay off the field.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: FIELD, against: ['sheathTail'], because: 'nature' }],
  values: [TAIL],
  severity: 'major',
  remedies: ['coverDrape', 'replaceItem'],
  source: 'common practice',
  mark: 'memory',
  stations: ['sheath', 'field'],
};

const hungCord: Rule = {
  id: 'cord-hung-below-returned',
  title: 'Cord that hung below the field comes back',
  statement:
    'A sheathed stretch of cord that has hung below the field counts as unsterile. Let it hang; it must not be drawn back over the field or into a sterile hand.',
  sentence: '{against} had hung below the field and came back to the {surface}.',
  triggers: [
    { kind: 'touch', surfaces: [...FIELD, ...SHEATH], against: SHEATH, because: 'offField', whenBack: true, otherThing: true },
    { kind: 'touch', surfaces: [...GLOVE, ...GOWN, ...ITEM, ...PREPARED], against: SHEATH, because: 'offField', otherThing: true },
  ],
  values: [],
  severity: 'major',
  remedies: ['newSheath', 'coverDrape', 'changeGlove'],
  source: 'common practice',
  mark: 'derived',
  stations: ['sheath', 'field'],
};

/** The cord of the probe: bare, at the sheath's open end, or hung below the field. */
export const CORD_RULES: readonly Rule[] = [...againstBareCord, ...againstTail, cordOnField, tailOnField, hungCord];
