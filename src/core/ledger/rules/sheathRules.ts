import type { Rule } from './rule.ts';
import { FIELD, SHEATH } from './kinds.ts';
import { gelReport, sheathManual } from './sources.ts';
import { SUBJECTS } from './subjects.ts';

const againstBareProbe: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-bare-probe`,
  title: `${subject.words} against the bare probe`,
  statement: `A probe without its sheath is clean, not sterile; ${subject.words.toLowerCase()} that it touches is spoiled. It goes into the mouth without touching the outside.`,
  sentence: '{surface} against the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['bareProbe'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: subject.remedies,
  source: 'common practice',
  mark: 'memory',
  stations: ['sheath'],
}));

const bareProbeOnField: Rule = {
  id: 'bare-probe-on-field',
  title: 'The bare probe on the field',
  statement: 'A probe without its sheath is kept off the field; where it touches, the field is covered.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: FIELD, against: ['bareProbe'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['coverDrape', 'replaceItem'],
  source: 'common practice',
  mark: 'memory',
  stations: ['sheath'],
};

const againstUnsterileItem: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-unsterile-item`,
  title: `${subject.words} on something that is not sterile`,
  statement: `What was never sterile, such as a bottle of gel, is not taken into a sterile hand: gel for the sheath comes in sterile packets. ${subject.words} that touches it is spoiled.`,
  sentence: '{surface} on the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['unsterileItem'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: subject.remedies,
  source: gelReport,
  mark: 'derived',
  stations: ['sheath'],
}));

const unsterileItemOnField: Rule = {
  id: 'unsterile-item-on-field',
  title: 'Something that is not sterile on the field',
  statement: 'What was never sterile stays off the field and the kit table; where it lay, the field is covered.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: FIELD, against: ['unsterileItem'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['coverDrape', 'replaceItem'],
  source: 'common practice',
  mark: 'memory',
  stations: ['sheath'],
};

const sheathBelowField: Rule = {
  id: 'sheath-below-field',
  title: 'The sheath hangs below the field',
  statement: 'A sheath that is opened is held so high that its closed end stays above the field, or above the waist beside it. What hangs lower counts as unsterile.',
  sentence: '{surface} below the level of the field.',
  triggers: [{ kind: 'zone', zone: 'belowField', surfaces: SHEATH, loses: 'thing' }],
  values: [],
  severity: 'major',
  remedies: ['newSheath'],
  source: 'common practice',
  mark: 'derived',
  stations: ['sheath'],
  policy: { key: 'lowerLimit' },
};

const torn: Rule = {
  id: 'sheath-torn',
  title: 'The sheath is torn',
  statement: 'A sheath with a hole is no barrier: stop, take the probe out and clean it, new sheath and new gel, new gloves.',
  sentence: '{surface} torn.',
  triggers: [{ kind: 'torn' }],
  values: [],
  severity: 'major',
  remedies: ['newSheath', 'changeGlove'],
  source: sheathManual,
  mark: 'derived',
  stations: ['sheath'],
};

const unsterileGel: Rule = {
  id: 'unsterile-gel',
  title: 'Gel that is not sterile in the sheath',
  statement: 'Gel inside the sheath is sterile as well: sheaths get holes that nobody sees, and gel comes out of them. With any other gel in it the sheath is replaced.',
  sentence: 'Gel from the {against} in the {surface}.',
  triggers: [{ kind: 'gelled' }],
  values: [],
  severity: 'major',
  remedies: ['newSheath'],
  source: gelReport,
  mark: 'derived',
  stations: ['sheath'],
};

/** Loading the probe into its sheath. */
export const SHEATH_RULES: readonly Rule[] = [...againstBareProbe, bareProbeOnField, ...againstUnsterileItem, unsterileItemOnField, sheathBelowField, torn, unsterileGel];
