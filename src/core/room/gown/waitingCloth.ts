import type { Point } from '../layout.ts';

/** From the middle to the first point (m). */
const BESIDE_M = 0.1;

/** Points in which cloth that is not open waits, out of the room at height `y`: so many links in a row, toward positive x where `toward` is 1, else −1 (m). */
export const waitingCloth = (toward: number, y: number, links: number, lengthM: number): Point[] =>
  Array.from({ length: links + 1 }, (_, k): Point => [toward * (BESIDE_M + (k * lengthM) / links), y]);
