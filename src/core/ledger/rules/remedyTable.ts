import { FIELD_REMEDIES } from './fieldRemedies.ts';
import { GOWN_REMEDIES } from './gownRemedies.ts';
import type { RemedyRow } from './remedyRow.ts';
import { SHEATH_REMEDIES } from './sheathRemedies.ts';
import { breaksArticle, emergencyLine, fieldAnswers, prepLabel, studyGuide } from './sources.ts';

const waitingRows: readonly RemedyRow[] = [
  {
    id: 'needleStick',
    row: 'B02',
    broken: 'A needle went through the glove',
    asked: 'Step back, take the glove off, follow the protocol for exposures, then a new glove and a new needle.',
    practised: { station: 'field', missing: 'a needle that pierces' },
    source: 'common practice',
    mark: 'memory',
  },
  {
    id: 'gownWet',
    row: 'B06',
    broken: 'The gown is wet through',
    asked: 'Change gown and gloves and cover the wet part of the field.',
    practised: { station: 'field', missing: 'liquids that soak cloth' },
    source: 'common practice',
    mark: 'memory',
  },
  {
    id: 'maskOrCapLoose',
    row: 'B08',
    broken: 'The mask slips below the nose, the cap is loose, hair falls',
    asked: 'The assistant puts it right from behind; where hair fell, the field is covered or replaced.',
    practised: { station: 'setUp' },
    source: 'common practice',
    mark: 'memory',
  },
  {
    id: 'guidewireTouched',
    row: 'B11',
    broken: 'The end of the guidewire met something unsterile',
    asked: 'Take a new guidewire; a touched one is never wiped and used on.',
    practised: { station: 'field', missing: 'a guidewire; the station ends before it' },
    source: 'common practice',
    mark: 'memory',
  },
  {
    id: 'fieldSoaked',
    row: 'B14',
    broken: 'The field is soaked through',
    asked: 'Cover it with a new sterile drape that lets no liquid pass, and replace what was soaked.',
    practised: { station: 'field', missing: 'liquids that soak cloth' },
    source: fieldAnswers,
    mark: 'derived',
  },
  {
    id: 'preparedSkinWet',
    row: 'B19',
    broken: 'The prepared skin is not dry and the puncture is near',
    asked: 'Wait. If the needle went in while it was wet, the insertion was not into dry skin, and waiting afterwards does not change that.',
    practised: { station: 'prepAndDrape' },
    source: prepLabel,
    mark: 'derived',
  },
  {
    id: 'packDamaged',
    row: 'B25',
    broken: 'The pack is wet, torn, out of date, or its indicator has not turned',
    asked: 'Reject the whole pack.',
    practised: { station: 'setUp' },
    source: breaksArticle,
    mark: 'derived',
  },
  {
    id: 'fieldLeftAlone',
    row: 'B26',
    broken: 'The field was left alone, or the back was turned on it',
    asked: 'It counts as contaminated: open a new pack, unless local policy accepts a field that was covered and watched.',
    practised: { station: 'setUp' },
    source: studyGuide,
    mark: 'derived',
  },
  {
    id: 'foundLate',
    row: 'B27',
    broken: 'A break is found when the catheter is already in',
    asked: 'Tell the team and write it into the record; a line placed without assured asepsis is replaced within 48 hours.',
    practised: { station: 'field', missing: 'a catheter; the station ends before it' },
    source: emergencyLine,
    mark: 'memory',
  },
];

/** Every break of the table of practice with its remedy, in the order of that table; rows of our own come last. */
export const REMEDY_TABLE: readonly RemedyRow[] = [
  ...[...GOWN_REMEDIES, ...FIELD_REMEDIES, ...SHEATH_REMEDIES, ...waitingRows].filter(({ row }) => row !== null).sort((a, b) => (a.row! < b.row! ? -1 : 1)),
  ...[...FIELD_REMEDIES, ...SHEATH_REMEDIES, ...GOWN_REMEDIES].filter(({ row }) => row === null),
];
