/** Part of the gel that is enough for a picture, 0 to 1 of a packet (common practice: a thin layer does). */
export const GEL_ENOUGH = 0.5;
/** Part of the anaesthetic that counts as given, 0 to 1 of the syringe; what is left in the needle does not matter. */
export const ANAESTHETIC_ENOUGH = 0.8;
/** Distance from the tip of the needle to the site within which the needle is at the site, in metres. */
export const NEEDLE_AT_SITE_M = 0.03;
/** A parked probe that moves no faster creeps with the drape and has not slid off, in metres per second; it does not count as lying still either. */
export const CREEP_MPS = 0.01;
/** A probe that nobody holds and that slides or is off the field for longer than this has slid off, in seconds; setting it down takes less. */
export const SLIDING_S = 0.5;
