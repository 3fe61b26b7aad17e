import type { Rule } from './rule.ts';
import { FIELD, GLOVE, ITEM } from './kinds.ts';
import { drapeStandard, studyGuide } from './sources.ts';
import { SUBJECTS } from './subjects.ts';

const againstUnderside: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-underside`,
  title: `${subject.words} on the underside of a drape`,
  statement: `The side of a laid drape that faces patient and bed is not sterile; ${subject.words.toLowerCase()} that touches it is spoiled.`,
  sentence: '{surface} on the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['drapeUnder'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: subject.remedies,
  source: 'common practice',
  mark: 'memory',
  stations: ['sheath', 'field'],
}));

const MARGIN = { name: 'margin', value: 0.025, unit: 'm', policy: 'marginM' } as const;
const margin = { values: [MARGIN], severity: 'major', source: studyGuide, mark: 'looked-up', stations: ['sheath', 'field'], sentence: '{surface} on the margin: {against}.' } as const;

const onMargin: readonly Rule[] = [
  {
    ...margin,
    id: 'glove-on-margin',
    title: 'A glove on the margin of the field',
    statement: 'The outer 2.5 cm of a drape, and all of it that hangs beyond the edge of the field, do not count as sterile; a glove that touches them is changed.',
    triggers: [{ kind: 'touch', surfaces: GLOVE, against: FIELD, because: 'margin' }],
    remedies: ['changeGlove'],
  },
  {
    ...margin,
    id: 'item-on-margin',
    title: 'An item on the margin of the field',
    statement: 'An item that lands on the outer 2.5 cm of the field or beyond is replaced; the margin itself stays as it is.',
    triggers: [{ kind: 'touch', surfaces: ITEM, against: FIELD, because: 'margin' }],
    remedies: ['replaceItem'],
  },
  {
    ...margin,
    id: 'sheath-on-margin',
    title: 'The sheathed probe on the margin of the field',
    statement: 'The probe is laid well inside the edge of the field; on the outer 2.5 cm or beyond its sheath is spoiled. The cord has to cross the edge and is not meant.',
    triggers: [{ kind: 'touch', surfaces: ['probeSheath'], against: FIELD, because: 'margin' }],
    remedies: ['newSheath'],
  },
];

const slidToward: Rule = {
  id: 'drape-slid-toward-site',
  title: 'The drape slid toward the site',
  statement: 'The edge of a laid drape that moves toward the site brings with it what lay on unprepared skin. The site is prepared and draped anew; a drape is never pulled back.',
  sentence: 'The drape slid over the {surface}.',
  triggers: [{ kind: 'drift', direction: 'toward', loses: 'site' }],
  values: [{ name: 'movement that counts', value: 0.01, unit: 'm', policy: 'driftTowardSiteM' }],
  severity: 'critical',
  remedies: ['prepAndDrape'],
  source: drapeStandard,
  mark: 'looked-up',
  stations: ['sheath', 'field'],
};

const slidAway: Rule = {
  id: 'drape-slid-away',
  title: 'The drape slid away and bared unprepared skin',
  statement: 'A drape that slid away leaves unprepared skin beside the site. It is covered with something sterile, or prepared and draped anew; the drape is not pulled back.',
  sentence: 'The drape slid away beside the {surface}: unprepared skin lies bare.',
  triggers: [{ kind: 'drift', direction: 'away', loses: 'nothing' }],
  values: [],
  severity: 'major',
  remedies: ['coverDrape', 'prepAndDrape'],
  source: drapeStandard,
  mark: 'derived',
  stations: ['sheath', 'field'],
};

/** The drapes themselves: underside, margin, drift. */
export const DRAPE_RULES: readonly Rule[] = [...againstUnderside, ...onMargin, slidToward, slidAway];
