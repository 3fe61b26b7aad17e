import type { RemedyRow } from './remedyRow.ts';
import { fieldAnswers, gelReport, sheathManual } from './sources.ts';

/** Breaks of loading the probe into its sheath. */
export const SHEATH_REMEDIES: readonly RemedyRow[] = [
  {
    id: 'sheathTorn',
    row: 'B20',
    broken: 'The sheath is torn or has a hole',
    asked: 'Stop scanning, take the probe out, clean it, new sheath and new gel, change gloves; prepare the skin again if anything from inside got to the site.',
    practised: { rules: ['sheath-torn'], remedies: ['newSheath', 'changeGlove'], without: 'cleaning the probe' },
    source: sheathManual,
    mark: 'derived',
  },
  {
    id: 'sheathTouchedInLoading',
    row: 'B21',
    broken: 'While it was loaded, the probe or the assistant touched the sterile outside of the sheath, or the sheath hung too low',
    asked: 'Discard the sheath and take a new one; change the gloves that were touched.',
    practised: { rules: ['sheath-on-bare-probe', 'sheath-below-field'], remedies: ['newSheath', 'changeGlove'] },
    source: 'common practice',
    mark: 'memory',
  },
  {
    id: 'gelNotSterile',
    row: 'B24',
    broken: 'Gel that is not sterile got into the sheath, on to a glove or to the field',
    asked: 'Wipe it off with sterile gauze, prepare the skin again, and replace what carried it; a sheath that has it inside is replaced.',
    practised: { rules: ['unsterile-gel', 'unsterile-item-on-field'], remedies: ['newSheath', 'coverDrape', 'replaceItem'], without: 'gel that is wiped off' },
    source: gelReport,
    mark: 'derived',
  },
  {
    id: 'bareProbeOnField',
    row: null,
    broken: 'The probe without its sheath touched the field',
    asked: 'Have it taken off, lay a new sterile drape over the place and replace what lay there.',
    practised: { rules: ['bare-probe-on-field'], remedies: ['coverDrape', 'replaceItem'], requests: ['stop'] },
    source: fieldAnswers,
    mark: 'derived',
  },
];
