import type { SheathTaskId } from '../observation.ts';

/**
 * A run in which one of these is missing cannot be met. Gel inside: without it there is no picture, and gel that is fetched later is a
 * break waiting to happen. Covered: bare cord must not come on to the field (both common practice).
 */
const CRITICAL: readonly SheathTaskId[] = ['gelInside', 'covered'];

export const isCritical = (task: SheathTaskId): boolean => CRITICAL.includes(task);

/**
 * What must come before what (common practice): once the probe is taken, the film may be drawn along the cord before or after the air
 * is out and the bands sit, and these two have no order between them; all comes before the probe is laid down.
 */
const BEFORE: Readonly<Record<SheathTaskId, readonly SheathTaskId[]>> = {
  gelInside: [],
  probeTaken: ['gelInside'],
  covered: ['gelInside', 'probeTaken'],
  airOut: ['gelInside', 'probeTaken'],
  banded: ['gelInside', 'probeTaken'],
  laidDown: ['gelInside', 'probeTaken', 'covered', 'airOut', 'banded'],
};

export const tasksBefore = (task: SheathTaskId): readonly SheathTaskId[] => BEFORE[task];
