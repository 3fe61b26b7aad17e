/** Points are kept in hundredths, so that sums are the same whatever the order. */
export const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** 0 to 1. */
export const clamped = (share: number): number => Math.min(1, Math.max(0, share));

/** Whole tenths of a total, never rounded up: 89.96 is not 90. */
export const tenthsDown = (value: number): number => Math.floor(value * 10 + 1e-6) / 10;
