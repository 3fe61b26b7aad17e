import { STEPS_PER_SECOND } from '../base/time.ts';

/** Steps as minutes and seconds of the run, "3:07". */
export function clock(steps: number): string {
  const seconds = Math.floor(steps / STEPS_PER_SECOND);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
