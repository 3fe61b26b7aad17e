import { signOf, type Side } from '../base/side.ts';
import type { ShapeSpec } from '../physics/types.ts';

/**
 * The hand in its own frame: first axis from the wrist to the fingertips, second axis toward the back of the hand; the origin is the
 * middle of the palm. Metres. Hand length 0.19 m (ANSUR II, male mean 193 mm, female 181 mm).
 */
export const HAND = {
  massKg: 0.4,
  wristU: -0.095,
  /** Where the fingertips meet when they close. */
  gripU: 0.085,
  fingers: { fromU: 0.035, toU: 0.085, v: -0.004, r: 0.016 },
  palm: { fromU: -0.035, toU: 0.025, v: -0.012, r: 0.026 },
  back: { fromU: -0.035, toU: 0.025, v: 0.012, r: 0.026 },
  cuff: { fromU: -0.085, toU: -0.06, v: 0, r: 0.033 },
} as const;

export const HAND_PARTS = ['fingers', 'palm', 'back', 'cuff'] as const;
export type HandPart = (typeof HAND_PARTS)[number];

/** The solid parts of a hand in its own frame: capsules, in the order of `HAND_PARTS`. A left hand is the mirror image of a right one. */
export const handShapes = (side: Side): ShapeSpec[] =>
  HAND_PARTS.map((name) => {
    const { fromU, toU, v, r } = HAND[name];
    return { verts: [[fromU, -signOf(side) * v], [toU, -signOf(side) * v]], radius: r };
  });

/** Radii of the sleeve along the arm in metres, with the cloth. */
export const SLEEVE = { wristR: 0.038, elbowR: 0.055, upperR: 0.06, seamFromWristM: 0.02 } as const;
