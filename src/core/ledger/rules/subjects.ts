import type { RemedyId } from '../../commands/command.ts';
import type { SurfaceKind } from '../surface.ts';
import type { StationId } from './station.ts';
import { GLOVE, GOWN, ITEM, SHEATH } from './kinds.ts';

/** What the operator works with and can spoil: one rule each against every unsterile thing, since a colleague would name them apart. */
export interface Subject {
  readonly id: 'glove' | 'sleeve' | 'sheath' | 'item';
  readonly words: string;
  readonly kinds: readonly SurfaceKind[];
  readonly remedies: readonly RemedyId[];
}

export const SUBJECTS: readonly Subject[] = [
  { id: 'glove', words: 'A glove', kinds: GLOVE, remedies: ['changeGlove'] },
  { id: 'sleeve', words: 'A gown or its sleeve', kinds: GOWN, remedies: ['changeGownAndGloves'] },
  { id: 'sheath', words: 'The sheath', kinds: SHEATH, remedies: ['newSheath'] },
  { id: 'item', words: 'An item', kinds: ITEM, remedies: ['replaceItem'] },
];

/** Stations in which such a thing is at hand: gown and gloves from the first on. */
export const stationsWith = ({ id }: Subject): readonly StationId[] => (id === 'glove' || id === 'sleeve' ? ['gown', 'sheath', 'field'] : ['sheath', 'field']);
