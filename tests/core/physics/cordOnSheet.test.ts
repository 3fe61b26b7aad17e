import { describe, expect, it } from 'vitest';
import { GRAVITY } from '../../support/physics/references.ts';
import { pullCordOnSheet } from '../../support/physics/strandExperiments.ts';

const CORD_WEIGHT = 0.09 * GRAVITY;
const SHEET_WEIGHT = 0.06 * 1.8 * GRAVITY;

describe('a cord lying on a sheet', () => {
  it.each([0.2, 0.3])('slips within 2 % of µ times its weight, friction %f', (friction) => {
    const slip = friction * CORD_WEIGHT; // Coulomb
    const held = pullCordOnSheet(friction, 0.98 * slip, { sheetPinned: true, tableFriction: 0, seconds: 3 });
    expect(held.cordWay).toBeLessThan(0.001);
    expect(Math.abs(held.pinTension / (0.98 * slip) - 1)).toBeLessThan(0.01); // the sheet passes the pull on to its pin
    expect(pullCordOnSheet(friction, 1.02 * slip, { sheetPinned: true, tableFriction: 0, seconds: 3 }).cordWay).toBeGreaterThan(0.005);
  });

  it('carries a free sheet along like one body', () => {
    const pull = 0.2;
    const { cordWay, sheetWay } = pullCordOnSheet(0.3, pull, { sheetPinned: false, tableFriction: 0.05, seconds: 1 });
    // Newton for both together, pull rising over 0.5 s, friction of the table and air drag 0.3/s, integrated in small pieces.
    const mass = (CORD_WEIGHT + SHEET_WEIGHT) / GRAVITY;
    let speed = 0;
    let way = 0;
    for (let t = 0; t < 1; t += 1e-4) {
      const drive = pull * Math.min(1, t / 0.5) - 0.05 * mass * GRAVITY;
      speed = Math.max(0, speed + (drive / mass - 0.3 * speed) * 1e-4);
      way += speed * 1e-4;
    }
    expect(Math.abs(sheetWay - cordWay)).toBeLessThan(0.001);
    expect(Math.abs(cordWay / way - 1)).toBeLessThan(0.03);
  });
});
