import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import { clockText } from '../parts/clockText.ts';

/** An instant to a tenth of a second: "07:06.3". */
export function instantText(step: number): string {
  const tenths = Math.floor((Math.max(0, step) / STEPS_PER_SECOND) * 10 + 1e-6);
  return `${clockText(Math.floor(tenths / 10))}.${tenths % 10}`;
}

/** An instant as minutes and seconds: "07:06". */
export const momentText = (step: number): string => clockText(step / STEPS_PER_SECOND);
