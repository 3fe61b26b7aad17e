import type { GownTaskId } from '../observation.ts';

/** A run in which one of these is missing cannot be met: without gown and both gloves there is no barrier (common practice). */
const CRITICAL: readonly GownTaskId[] = ['armsIn', 'tied', 'firstGlove', 'secondGlove'];

export const isCritical = (task: GownTaskId): boolean => CRITICAL.includes(task);

/**
 * What must come before what (common practice): the back may be tied before or after the gloves are on, since the assistant does it; the
 * outer tie is passed with gloved hands only.
 */
const BEFORE: Readonly<Record<GownTaskId, readonly GownTaskId[]>> = {
  opened: [],
  armsIn: ['opened'],
  tied: ['opened', 'armsIn'],
  firstGlove: ['opened', 'armsIn'],
  secondGlove: ['opened', 'armsIn', 'firstGlove'],
  turned: ['opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove'],
  waited: ['opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove', 'turned'],
};

export const tasksBefore = (task: GownTaskId): readonly GownTaskId[] => BEFORE[task];
