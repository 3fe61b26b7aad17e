import type { RemedyId } from '../../commands/command.ts';
import type { SurfaceKind } from '../surface.ts';
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
  { id: 'sleeve', words: 'A gown sleeve', kinds: GOWN, remedies: ['changeGownAndGloves'] },
  { id: 'sheath', words: 'The sheath', kinds: SHEATH, remedies: ['newSheath'] },
  { id: 'item', words: 'An item', kinds: ITEM, remedies: ['replaceItem'] },
];
