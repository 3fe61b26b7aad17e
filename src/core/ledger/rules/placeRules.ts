import type { Rule } from './rule.ts';
import { FIELD, GLOVE, GOWN, ITEM, KEPT, PREPARED, SHEATH } from './kinds.ts';
import { breaksArticle, commonBreaks, studyGuide } from './sources.ts';

const handBelowField: Rule = {
  id: 'hand-below-field',
  title: 'A hand below the field',
  statement:
    'A gloved hand below the level of the field, or below the waist beside it, counts as unsterile and its glove is changed, although it touched nothing. It is a risk until that glove touches something else.',
  sentence: '{surface} below the level of the field.',
  triggers: [{ kind: 'zone', zone: 'belowField', surfaces: GLOVE, loses: 'thing' }],
  values: [],
  severity: 'minor',
  remedies: ['changeGlove'],
  source: studyGuide,
  mark: 'looked-up',
  stations: ['gown', 'sheath', 'field'],
  policy: { key: 'lowerLimit' },
};

const handOutOfSight: Rule = {
  id: 'hand-out-of-sight',
  title: 'A hand out of sight',
  statement: 'A gloved hand that cannot be watched counts as unsterile and its glove is changed. It is a risk until that glove touches something else.',
  sentence: '{surface} out of sight.',
  triggers: [{ kind: 'zone', zone: 'outOfSight', surfaces: GLOVE, loses: 'thing' }],
  values: [],
  severity: 'minor',
  remedies: ['changeGlove'],
  source: studyGuide,
  mark: 'looked-up',
  stations: ['gown', 'sheath', 'field'],
};

const reachOver: Rule = {
  id: 'reach-over',
  title: 'Reaching over the field with something unsterile',
  statement: 'An unsterile arm or thing is not held over the sterile field, since what falls from it lands there. It is a risk without a touch.',
  sentence: '{surface} over the field.',
  triggers: [{ kind: 'zone', zone: 'overField', surfaces: 'unsterile', loses: 'nothing' }],
  values: [],
  severity: 'minor',
  remedies: ['coverDrape', 'replaceItem'],
  source: breaksArticle,
  mark: 'looked-up',
  stations: ['sheath', 'field'],
  policy: { key: 'reachOver', offWhen: 'touchOnly' },
};

const fallenItem: Rule = {
  id: 'fallen-item-taken-back',
  title: 'A fallen item is taken back',
  statement: 'An item that fell off the field stays where it is and is replaced. Taken into a sterile hand or laid back, it spoils what it touches.',
  sentence: '{against} had fallen off the field and came back to the {surface}.',
  triggers: [
    { kind: 'touch', surfaces: [...GLOVE, ...GOWN, ...PREPARED], against: ITEM, because: 'offField', otherThing: true },
    { kind: 'touch', surfaces: [...FIELD, ...SHEATH, ...ITEM], against: ITEM, because: 'offField', whenBack: true, otherThing: true },
  ],
  values: [],
  severity: 'major',
  remedies: ['replaceItem', 'changeGlove', 'coverDrape'],
  source: breaksArticle,
  mark: 'derived',
  stations: ['sheath', 'field'],
};

const unsterileThing: Rule = {
  id: 'unsterile-thing-touched',
  title: 'Something that should be sterile but never was',
  statement: 'A glove, sheath, item, field or skin that was not sterile from the beginning spoils what touches it.',
  sentence: '{surface} on the {against}, which was never sterile.',
  triggers: [{ kind: 'touch', surfaces: KEPT, against: KEPT, because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['changeGlove', 'replaceItem', 'newSheath', 'coverDrape'],
  source: commonBreaks,
  mark: 'memory',
  stations: ['sheath', 'field'],
};

const usedAtSite: Rule = {
  id: 'unsterile-used-at-site',
  title: 'Something unsterile used at the site',
  statement:
    'Nothing unsterile is used at the site. Where an earlier break had spoiled the thing, that break has now reached the site and becomes critical, and is not counted twice; where the thing was never sterile, or had left the field, the use is the break.',
  sentence: '{against} used at the {surface}.',
  triggers: [{ kind: 'used' }],
  values: [],
  severity: 'critical',
  remedies: ['prepAndDrape', 'replaceItem'],
  source: commonBreaks,
  mark: 'memory',
  stations: ['field'],
};

/** Where hands and things are, and what is brought to the site. */
export const PLACE_RULES: readonly Rule[] = [handBelowField, handOutOfSight, reachOver, fallenItem, unsterileThing, usedAtSite];
