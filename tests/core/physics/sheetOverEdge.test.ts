import { describe, expect, it } from 'vitest';
import { hangSheet, slipOverhang, EDGE_RADIUS } from '../../support/physics/strandExperiments.ts';

const SHEET = 1.8;
/** Overhang whose hanging share is `factor` times that of the closed form. */
const overhangAt = (factor: number, friction: number, edgeFriction: boolean): number => {
  const r = EDGE_RADIUS + 0.0015;
  return factor * (slipOverhang(friction, edgeFriction) + r) - r;
};

describe.each([['slippery', false], ['rough', true]] as const)('a sheet over a %s rounded table edge', (_, edgeFriction) => {
  it.each([0.2, 0.3, 0.5])('slips within 3 % of the closed form, friction %f', (friction) => {
    expect(hangSheet(friction, overhangAt(0.97, friction, edgeFriction), edgeFriction, 3)).toBeLessThan(0.01);
    expect(hangSheet(friction, overhangAt(1.03, friction, edgeFriction), edgeFriction, 4)).toBeGreaterThan(0.03);
    expect(overhangAt(1.03, friction, edgeFriction)).toBeLessThan(SHEET);
  });

  it.each([0.2, 0.3, 0.5])('creeps less than 1 mm/min at 80 % of it, friction %f', (friction) => {
    const seconds = 12;
    const settled = hangSheet(friction, 0.8 * slipOverhang(friction, edgeFriction), edgeFriction, 2);
    const later = hangSheet(friction, 0.8 * slipOverhang(friction, edgeFriction), edgeFriction, 2 + seconds);
    expect(Math.abs(later - settled) * (60 / seconds)).toBeLessThan(0.001);
  });
});
