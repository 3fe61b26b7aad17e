import { describe, expect, it } from 'vitest';
import { alongFromArc, arcFromAlong } from '../../../../src/core/room/sheath/fromFace.ts';
import { faceAreaM2, footprint, girthM, sectionAt } from '../../../../src/core/room/sheath/headShape.ts';
import { PROBE } from './usualProbe.ts';

const steps = (from: number, to: number, count: number): number[] => Array.from({ length: count }, (_, k) => from + ((to - from) * k) / (count - 1));

describe('The probe from its face to the cord', () => {
  // Sizes of linear probes, from memory: footprint 25 to 50 mm with 38 typical, depth of the body 20 to 30 mm.
  it('has the footprint and depth of a linear probe', () => {
    const [from, to] = footprint(PROBE);
    expect(to - from).toBeCloseTo(0.038, 9);
    expect(2 * sectionAt(PROBE, 0.05).halfDepthM).toBeGreaterThanOrEqual(0.02);
    expect(2 * sectionAt(PROBE, 0.05).halfDepthM).toBeLessThanOrEqual(0.03);
  });

  it('is the cord beyond its length', () => {
    for (const along of [0.124, 0.13, 1.5]) expect(girthM(sectionAt(PROBE, along))).toBeCloseTo(2 * Math.PI * 0.0035, 12);
  });

  it('does not jump anywhere', () => {
    const widths = steps(-0.01, 0.2, 2000).map((along) => sectionAt(PROBE, along).halfWidthM);
    for (let k = 1; k < widths.length; k++) expect(Math.abs(widths[k]! - widths[k - 1]!)).toBeLessThan(1e-4);
  });
});

describe('Girth and area', () => {
  // Against sums over the outline: a rectangle 2 (a − b) by 2 b with half circles of radius b at its ends.
  it('are those of the outline walked in small steps', () => {
    const { halfWidthM: a, halfDepthM: b } = sectionAt(PROBE, 0);
    const half = steps(-Math.PI / 2, Math.PI / 2, 20001).map((angle): [number, number] => [a - b + b * Math.cos(angle), b * Math.sin(angle)]);
    const outline = [...half, ...half.map(([x, y]): [number, number] => [-x, -y])];
    let [girth, twice] = [0, 0];
    outline.forEach(([x, y], k) => {
      const [nx, ny] = outline[(k + 1) % outline.length]!;
      girth += Math.hypot(nx - x, ny - y);
      twice += x * ny - y * nx;
    });
    expect(girthM(sectionAt(PROBE, 0)) / girth).toBeCloseTo(1, 7);
    expect((2 * faceAreaM2(PROBE)) / twice).toBeCloseTo(1, 7);
  });
});

describe('Arc coordinates', () => {
  it('begin half the face from its middle and grow as the flank is walked', () => {
    expect(arcFromAlong(PROBE, 0)).toBeCloseTo(0.019, 12);
    for (const along of [0.02, 0.05, 0.09, 0.11, 0.124, 0.4]) {
      const walked = steps(0, along, 20001).map((x): [number, number] => [x, sectionAt(PROBE, x).halfWidthM]);
      let arc = 0.019;
      for (let k = 1; k < walked.length; k++) arc += Math.hypot(walked[k]![0] - walked[k - 1]![0], walked[k]![1] - walked[k - 1]![1]);
      expect(arcFromAlong(PROBE, along)).toBeCloseTo(arc, 6);
    }
  });

  it('lead back to the distance on both flanks, and to 0 on the face', () => {
    for (const along of [0.003, 0.03, 0.1, 0.12, 0.7]) for (const flank of [-1, 1]) expect(alongFromArc(PROBE, flank * arcFromAlong(PROBE, along))).toBeCloseTo(along, 12);
    for (const s of [-0.019, 0, 0.0189]) expect(alongFromArc(PROBE, s)).toBe(0);
  });
});
