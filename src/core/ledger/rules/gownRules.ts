import { FIELD, GLOVE, ITEM, KEPT, SHEATH } from './kinds.ts';
import type { Rule } from './rule.ts';
import { gownArticle, gownZones, studyGuide } from './sources.ts';

const gloveOnOwnSkin: Rule = {
  id: 'glove-on-own-skin',
  title: 'Bare skin on the outside of a glove',
  statement: 'The outside of a sterile glove meets no skin, the operator’s own neither: in closed gloving it is taken through the sleeve, in open gloving by the inside of its folded cuff. A glove that skin has touched is thrown away.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: GLOVE, against: ['ownSkin'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove'],
  source: 'common practice',
  mark: 'memory',
  stations: ['gown'],
};

const gownOnOwnSkin: Rule = {
  id: 'gown-on-own-skin',
  title: 'Bare skin on the outside of the gown',
  statement: 'A gown is taken by its inner neck and touched on its inside only, until both hands are in sterile gloves.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: ['sleeve', 'gownFront'], against: ['ownSkin'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGownAndGloves'],
  source: 'common practice',
  mark: 'memory',
  stations: ['gown'],
};

const fingerPastCuff: Rule = {
  id: 'finger-past-cuff',
  title: 'A bare finger past the cuff',
  statement: 'Hands stop inside the cuffs. Once a fingertip has passed it, the knit cuff is unsterile, and closed gloving is over on that side: the gown is changed, or the hand is gloved by the open method.',
  sentence: '{against} past the {surface}.',
  triggers: [{ kind: 'touch', surfaces: ['knitCuff'], against: ['ownSkin'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGownAndGloves'],
  source: 'common practice',
  mark: 'memory',
  stations: ['gown'],
};

const ownSkinOnField: Rule = {
  id: 'own-skin-on-field',
  title: 'A bare hand on the opened wrapper or the field',
  statement: 'Before gloving, a hand takes the gown by its inner neck and touches neither the wrapper on which it lies nor anything else that is laid out sterile.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: [...FIELD, ...SHEATH, ...ITEM], against: ['ownSkin'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGownAndGloves', 'coverDrape'],
  source: 'common practice',
  mark: 'memory',
  stations: ['gown'],
};

const gownInside: Rule = {
  id: 'gown-inside-out',
  title: 'The inside of the gown against something sterile',
  statement: 'The inside of a gown is touched by the wearer and the assistant; what must be sterile keeps clear of it.',
  sentence: '{surface} against the {against}.',
  triggers: [{ kind: 'touch', surfaces: KEPT, against: ['gownInside'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove', 'coverDrape'],
  source: 'common practice',
  mark: 'memory',
  stations: ['gown'],
};

const gloveInside: Rule = {
  id: 'glove-inside-out',
  title: 'The inside of a glove against something sterile',
  statement: 'In open gloving bare fingers hold a glove by its turned-back cuff, which is its inside; gloved fingers go under that cuff and never over its edge.',
  sentence: '{surface} against the {against}.',
  triggers: [{ kind: 'touch', surfaces: KEPT, against: ['gloveInside'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove'],
  source: 'common practice',
  mark: 'memory',
  stations: ['gown'],
};

const passedCuff: Rule = {
  id: 'passed-cuff-met',
  title: 'A knit cuff through which a hand has gone against something sterile',
  statement: 'A knit cuff through which a hand has gone is damp and no barrier. After a glove is changed, nothing sterile meets that cuff until the new glove covers it.',
  sentence: '{surface} against the {against}.',
  triggers: [{ kind: 'touch', surfaces: KEPT, against: ['passedCuff'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove', 'coverDrape'],
  source: gownArticle,
  mark: 'derived',
  stations: ['gown'],
};

const cuffShows: Rule = {
  id: 'cuff-shows',
  title: 'The knit cuff shows after gloving',
  statement: 'A knit cuff that a hand has passed is damp and no barrier, so the glove covers all of it. Where it shows, the glove is changed or drawn over it.',
  sentence: '{surface} shows beyond the glove.',
  triggers: [{ kind: 'zone', zone: 'uncovered', surfaces: ['knitCuff'], loses: 'surface' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove'],
  source: gownArticle,
  mark: 'looked-up',
  stations: ['gown'],
};

const sleevedHandLow: Rule = {
  id: 'sleeved-hand-low',
  title: 'A hand in its sleeve below the waist',
  statement: 'Sleeves and cuffs stay above the waist, also before the gloves are on. What was below counts as unsterile.',
  sentence: '{surface} below the waist.',
  triggers: [{ kind: 'zone', zone: 'belowField', surfaces: ['knitCuff'], loses: 'surface' }],
  values: [],
  severity: 'major',
  remedies: ['changeGownAndGloves'],
  source: studyGuide,
  mark: 'derived',
  stations: ['gown'],
};

const handInArmpit: Rule = {
  id: 'hand-in-armpit',
  title: 'A hand in the armpit',
  statement: 'Armpits are not sterile, gown or not: whoever waits keeps the hands together in front, above the waist and in sight.',
  sentence: '{surface} in the armpit.',
  triggers: [{ kind: 'zone', zone: 'armpit', surfaces: GLOVE, loses: 'thing' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove', 'changeGownAndGloves'],
  source: gownZones,
  mark: 'looked-up',
  stations: ['gown', 'sheath', 'field'],
};

const gloveOnCardEnd: Rule = {
  id: 'glove-on-card-end',
  title: 'A glove on the assistant’s part of the tie card',
  statement: 'The card is passed by its own part, and the tie is taken back without touching what the assistant held.',
  sentence: '{surface} on the {against}.',
  triggers: [{ kind: 'touch', surfaces: KEPT, against: ['cardEnd'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove'],
  source: 'common practice',
  mark: 'memory',
  stations: ['gown'],
};

const gloveTorn: Rule = {
  id: 'glove-torn',
  title: 'A glove tears',
  statement: 'A torn glove is no barrier and is changed. One that is too small tears when it is pulled hard.',
  sentence: '{surface} torn.',
  triggers: [{ kind: 'gloveTorn' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove'],
  source: 'common practice',
  mark: 'memory',
  stations: ['gown'],
};

/** Putting on gown and gloves, and waiting in them. */
export const GOWN_RULES: readonly Rule[] = [gownOnOwnSkin, fingerPastCuff, gloveOnOwnSkin, ownSkinOnField, gownInside, gloveInside, passedCuff, cuffShows, sleevedHandLow, handInArmpit, gloveOnCardEnd, gloveTorn];
