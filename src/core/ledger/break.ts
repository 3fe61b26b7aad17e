import type { RemedyId } from '../commands/command.ts';
import type { Reach } from './surface.ts';

export type Severity = 'minor' | 'major' | 'critical';

/** One surface that a break made unsterile. Depth 0 is the root itself, 1 what the root touched, and so on. */
export interface Spread {
  readonly surface: string;
  readonly depth: number;
  readonly step: number;
  /** Touch by which it came, or null where it was no touch (a zone, a drift). */
  readonly touch: number | null;
  /** Surface that it came from, or null at the root. */
  readonly from: string | null;
}

/** The root event: something that must be sterile meets something that is not, or leaves where it counts as sterile. */
export interface Break {
  /** 1, 2, 3 … in the order of the run. */
  readonly number: number;
  readonly rule: string;
  readonly step: number;
  readonly x: number;
  readonly y: number;
  /** Surface that lost its sterility at the root. */
  readonly surface: string;
  /** Unsterile surface that it met, or null for a zone or a drift. */
  readonly against: string | null;
  readonly severity: Severity;
  readonly reach: Reach;
  /** Everything it reached, the root first, in order of steps. */
  readonly spread: readonly Spread[];
  /** Step at which the operator first said so after it began, or null. */
  readonly noticedStep: number | null;
  /** Step by which every surface that it spoiled was replaced, covered or thrown away (or the arm withdrawn), or null. */
  readonly remediedStep: number | null;
  readonly remedies: readonly RemedyId[];
  /** Rules of things that happened later and made it worse, such as the use of what it had spoiled; absent when there are none. */
  readonly escalatedBy?: readonly string[];
}
