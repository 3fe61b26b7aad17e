import type { Point } from '../layout.ts';
import { GOWN_LINKS } from './gownFacts.ts';

/** How far each fold of a folded gown lies under the one before (m). */
const LAYER_M = 0.002;

/** Points of a side of the gown, folded like a fan at (x, y): each link goes to and fro, first toward positive x where `toward` is 1, else −1. */
export function foldedCloth(x: number, y: number, toward: number, lengthM: number): Point[] {
  const link = lengthM / GOWN_LINKS;
  const across = toward * Math.sqrt(link * link - LAYER_M * LAYER_M);
  return Array.from({ length: GOWN_LINKS + 1 }, (_, k): Point => [x + (k % 2 === 0 ? 0 : across), y - LAYER_M * k]);
}
