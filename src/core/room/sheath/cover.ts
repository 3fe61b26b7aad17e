import type { Side } from '../../base/side.ts';

/** How probe and cord are covered now, for whoever looks at outlines. Plain data. */
export interface Cover {
  /** The film is on the probe. */
  on: boolean;
  /** Length of cord under it, from the probe (m). */
  coveredM: number;
  /** The sheath hangs open from a hand. */
  open: boolean;
  /** Hands whose fingers are under the fold at the mouth. */
  readonly folded: Record<Side, boolean>;
}

/** Probe and cord as a perfect operator left them, or bare. */
export const newCover = (coveredM: number | null): Cover => ({ on: coveredM !== null, coveredM: coveredM ?? 0, open: false, folded: { left: false, right: false } });
