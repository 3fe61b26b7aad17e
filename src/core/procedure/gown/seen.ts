import { otherSide, SIDES, type Side } from '../../base/side.ts';
import type { GownObservation } from '../observation.ts';

/** What was last seen of gown and gloves. Plain JSON. */
export type Seen = Omit<GownObservation, 'step'>;

/** What is seen before the first step: the gown lies folded, the gloves beside it. */
export const UNSEEN: Seen = {
  gown: 'lying',
  holding: { left: false, right: false },
  hemM: 0,
  clothesGapM: null,
  toCuffM: { left: null, right: null },
  gloves: { left: 'lying', right: 'lying' },
  isOut: { left: false, right: false },
  overlapM: { left: 0, right: 0 },
  card: 'away',
  handsTogether: false,
  isHelped: false,
};

const HANGS_CLEAR_M = 0.02;
/** The gown hangs too near to the wearer from here on (m); our own. */
const NEAR_CLOTHES_M = 0.12;
/** Fingertips this near to the end of the cuff are inside it (m). */
export const IN_CUFF_M = 0.1;

/** The gown hangs open from both hands and its hem is clear of the floor. */
export const isOpened = ({ gown, holding, hemM }: Seen): boolean => gown === 'open' && holding.left && holding.right && hemM > HANGS_CLEAR_M;

/** Hem or sleeves hang close to the wearer's own clothes. */
export const isNearClothes = ({ clothesGapM }: Seen): boolean => clothesGapM !== null && clothesGapM < NEAR_CLOTHES_M;

export const isInCuff = (seen: Seen, side: Side): boolean => {
  const left = seen.toCuffM[side];
  return left !== null && left <= IN_CUFF_M;
};

export const areArmsIn = (seen: Seen): boolean => SIDES.every((side) => isInCuff(seen, side));

export const glovesOn = ({ gloves }: Seen): number => SIDES.filter((side) => gloves[side] === 'on').length;

/** A glove that is drawn over does not cover the whole knit cuff yet, which is `knitM` long (m). */
export const isCuffShort = (seen: Seen, side: Side, knitM: number): boolean => seen.overlapM[side] < knitM;

/** Hand whose glove is on and leaves the knit cuff showing, while the other hand is gloved and can draw it over. */
export const cuffToCover = (seen: Seen, knitM: number): Side | null =>
  SIDES.find((side) => seen.gloves[side] === 'on' && isCuffShort(seen, side, knitM) && seen.gloves[otherSide(side)] === 'on') ?? null;

/** Gowned to the last tie, and a glove is off or its cuff still to be drawn over: it was changed in the middle of the work. */
export const isGlovingAgain = (seen: Seen, knitM: number): boolean =>
  seen.gown === 'tied' && seen.card === 'tied' && (glovesOn(seen) < 2 || cuffToCover(seen, knitM) !== null);

/** Another gown lies in place of the one before. */
export const isFresh = (seen: Seen, before: Seen): boolean => seen.gown === 'lying' && before.gown !== 'lying' && before.gown !== 'carried';
