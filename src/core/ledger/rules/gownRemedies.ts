import type { RemedyRow } from './remedyRow.ts';
import { gownArticle } from './sources.ts';

/** Breaks of gowning and gloving. */
export const GOWN_REMEDIES: readonly RemedyRow[] = [
  {
    id: 'handOutOfCuff',
    row: 'B03',
    broken: 'A bare hand came out of the cuff before gloving',
    asked: 'Change the gown, or cover the cuff where local policy allows it; clean the hands again if they were soiled.',
    practised: { rules: ['finger-past-cuff'], remedies: ['changeGownAndGloves'], without: 'cleaning the hands again' },
    source: 'common practice',
    mark: 'memory',
  },
  {
    id: 'cuffShows',
    row: 'B04',
    broken: 'The knitted cuff shows after gloving',
    asked: 'Cover it with a sterile sleeve or change the glove; treat what it touched.',
    practised: { rules: ['cuff-shows'], remedies: ['changeGlove'], without: 'sleeves to draw over' },
    source: gownArticle,
    mark: 'derived',
  },
  {
    id: 'skinOnOutside',
    row: null,
    broken: 'Bare skin met the outside of gown or glove, or the opened wrapper, or a hand in its sleeve hung low',
    asked: 'Throw away what was touched: a new glove, or a new gown with new gloves.',
    practised: { rules: ['gown-on-own-skin', 'glove-on-own-skin', 'own-skin-on-field', 'sleeved-hand-low', 'gown-inside-out', 'glove-inside-out', 'passed-cuff-met'], remedies: ['changeGownAndGloves', 'changeGlove', 'coverDrape'] },
    source: 'common practice',
    mark: 'memory',
  },
  {
    id: 'tieCardTouched',
    row: null,
    broken: 'A glove touched the part of the tie card that the assistant held',
    asked: 'Change that glove.',
    practised: { rules: ['glove-on-card-end'], remedies: ['changeGlove'] },
    source: 'common practice',
    mark: 'memory',
  },
];
