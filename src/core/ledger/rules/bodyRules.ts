import type { Rule } from './rule.ts';
import { FIELD, PREPARED } from './kinds.ts';
import { commonBreaks, gownZones, palpation } from './sources.ts';
import { stationsWith, SUBJECTS } from './subjects.ts';

const againstSkin: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-skin`,
  title: `${subject.words} on unprepared skin`,
  statement: `${subject.words} that touches skin which was not prepared is no longer sterile.`,
  sentence: '{surface} on the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['patientSkin'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: subject.remedies,
  source: commonBreaks,
  mark: 'memory',
  stations: ['sheath', 'field'],
}));

const againstFace: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: subject.id === 'glove' ? 'hand-on-face' : `${subject.id}-on-face`,
  title: subject.id === 'glove' ? 'A gloved hand on mask or face' : `${subject.words} against mask or face`,
  statement: `Mask, face and cap are not sterile; ${subject.words.toLowerCase()} that touches them is spoiled. When the face itches, the assistant wipes it.`,
  sentence: '{surface} on the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['face'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: subject.remedies,
  source: commonBreaks,
  mark: 'memory',
  stations: stationsWith(subject),
}));

const againstOwnClothes: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-own-clothes`,
  title: `${subject.words} against your own clothes`,
  statement: `Clothes that no sterile gown covers are not sterile; ${subject.words.toLowerCase()} that touches them is spoiled. A gown is let fall open at arm’s length, hands at shoulder height.`,
  sentence: '{surface} on the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['ownClothes'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: subject.remedies,
  source: 'common practice',
  mark: 'memory',
  stations: stationsWith(subject),
}));

const againstUpperSleeve: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-upper-sleeve`,
  title: `${subject.words} against the sleeve above the elbow`,
  statement: `The sleeve is sterile from the cuff to 5 cm above the elbow; ${subject.words.toLowerCase()} that touches it higher up is spoiled.`,
  sentence: '{surface} against the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['outerSleeve'], because: 'nature' }],
  values: [{ name: 'sterile sleeve above the elbow', value: 0.05, unit: 'm', policy: 'sleeveAboveElbowM' }],
  severity: 'major',
  remedies: subject.remedies,
  source: gownZones,
  mark: 'looked-up',
  stations: ['sheath', 'field'],
}));

const bodyOnField: Rule = {
  id: 'body-on-field',
  title: 'Upper sleeve, own clothes or face on the field',
  statement: 'Elbow, upper sleeve beyond its sterile part, own clothes or face that touches the field spoils what it touched.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: FIELD, against: ['outerSleeve', 'ownClothes', 'face'], because: 'nature' }],
  values: [{ name: 'sterile sleeve above the elbow', value: 0.05, unit: 'm', policy: 'sleeveAboveElbowM' }],
  severity: 'major',
  remedies: ['coverDrape'],
  source: gownZones,
  mark: 'derived',
  stations: ['sheath', 'field'],
};

const againstBareHand: readonly Rule[] = SUBJECTS.map((subject) => ({
  id: `${subject.id}-on-bare-hand`,
  title: `${subject.words} against the assistant’s bare hand`,
  statement: `The assistant’s hands and forearms are clean, not sterile; ${subject.words.toLowerCase()} that they touch is spoiled.`,
  sentence: '{surface} against the {against}.',
  triggers: [{ kind: 'touch', surfaces: subject.kinds, against: ['bareHand'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: subject.remedies,
  source: commonBreaks,
  mark: 'memory',
  stations: stationsWith(subject),
}));

const bareHandOnField: Rule = {
  id: 'bare-hand-on-field',
  title: 'The assistant’s bare hand on the field',
  statement: 'Someone who is not gowned and gloved keeps a distance from the field; where a bare hand or forearm touches it, the field is covered.',
  sentence: '{against} on the {surface}.',
  triggers: [{ kind: 'touch', surfaces: FIELD, against: ['bareHand'], because: 'nature' }],
  values: [],
  severity: 'major',
  remedies: ['coverDrape'],
  source: commonBreaks,
  mark: 'memory',
  stations: ['sheath', 'field'],
};

const touchesPreparedSkin: Rule = {
  id: 'prepared-skin-touched',
  title: 'Prepared skin touched by something unsterile',
  statement: 'Skin that was prepared stays so only while nothing unsterile touches it; then it is prepared and draped again.',
  sentence: '{against} on the {surface}.',
  triggers: [{
    kind: 'touch',
    surfaces: PREPARED,
    against: ['rail', 'pole', 'machine', 'bed', 'floor', 'tableEdge', 'bin', 'person', 'face', 'ownSkin', 'ownClothes', 'bareCord', 'sheathTail', 'outerSleeve', 'bareHand', 'bareProbe', 'unsterileItem'],
    because: 'nature',
  }],
  values: [],
  severity: 'major',
  remedies: ['prepAndDrape'],
  source: palpation,
  mark: 'memory',
  stations: ['sheath', 'field'],
};

/** Touches with the operator's and the patient's own bodies. */
export const BODY_RULES: readonly Rule[] = [...againstSkin, ...againstFace, ...againstOwnClothes, ...againstUpperSleeve, ...againstBareHand, bareHandOnField, bodyOnField, touchesPreparedSkin];
