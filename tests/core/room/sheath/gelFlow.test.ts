import { describe, expect, it } from 'vitest';
import { ballRadiusM } from '../../../../src/core/room/sheath/ball.ts';
import { gelLayer, runGel, runningMl, squeezeGelIn, strokeGel } from '../../../../src/core/room/sheath/gelFlow.ts';
import { CLINGING_M, GEL, GEL_WEIGHT, plugSpeed, shearRate } from '../../../../src/core/room/sheath/gelRheology.ts';
import { newInside, type SheathInside } from '../../../../src/core/room/sheath/inside.ts';
import { faceAreaM2 } from '../../../../src/core/room/sheath/headShape.ts';
import { PROBE } from './usualProbe.ts';

/** Runs for so many seconds in steps of the clock. */
function after(seconds: number, inside: SheathInside, down = 1): SheathInside {
  let now = inside;
  for (let k = 0; k < seconds * 120; k++) now = runGel(now, down, 1 / 120);
  return now;
}

describe('Gel that flows between two films', () => {
  // Against the law of Herschel and Bulkley, integrated from the wall to the middle: dv/dz = ((τ − τy) / K)^(1/n), τ = G z.
  it.each([0.006, 0.01, 0.02])('goes in the middle of a gap of twice %d m as fast as the shear across it adds up to', (h) => {
    const n = 20000;
    let v = 0;
    for (let k = 0; k < n; k++) {
      const stress = GEL_WEIGHT * h * ((k + 0.5) / n);
      v += ((Math.max(0, stress - GEL.yieldPa) / GEL.consistency) ** 2 * h) / n;
    }
    expect(plugSpeed(h, GEL_WEIGHT) / v).toBeCloseTo(1, 5);
  });

  it('stands still where its weight stays below the yield stress', () => {
    expect(plugSpeed(CLINGING_M * 0.999, GEL_WEIGHT)).toBe(0);
    expect(plugSpeed(CLINGING_M * 1.01, GEL_WEIGHT)).toBeGreaterThan(0);
    expect(shearRate(GEL.yieldPa)).toBe(0);
    expect(shearRate(GEL.yieldPa + 2 * GEL.consistency)).toBe(4);
  });

  it('is a ball of its volume', () => {
    for (const ml of [0.001, 0.5, 5, 20]) expect(ballRadiusM(ml * 1e-6) / Math.cbrt((3 * ml * 1e-6) / (4 * Math.PI))).toBeCloseTo(1, 12);
    expect(ballRadiusM(0)).toBe(0);
  });
});

describe('Gel in the pocket', () => {
  it('squeezed in at the closed end lies there at once', () => {
    expect(squeezeGelIn(newInside(), 5, 0.004)).toMatchObject({ gelMl: 5, lumps: [] });
  });

  it('runs down from the mouth of a pocket that hangs, a large lump sooner than a small one', () => {
    const seconds = (ml: number): number => {
      let [now, steps] = [squeezeGelIn(newInside(), ml, 0.1), 0];
      for (; now.lumps.length > 0 && steps < 120 * 600; steps++) now = runGel(now, 1, 1 / 120);
      return steps / 120;
    };
    expect(seconds(15)).toBeLessThan(seconds(5));
    expect(seconds(5)).toBeLessThan(60);
  });

  it('stays where it was put if the pocket lies flat or its end is up, and if there is too little to run', () => {
    const lump = squeezeGelIn(newInside(), 5, 0.1);
    expect(after(20, lump, 0)).toEqual(lump);
    expect(after(20, lump, -1)).toEqual(lump);
    const drop = squeezeGelIn(newInside(), 0.3, 0.1);
    expect(after(20, drop)).toEqual(drop);
    expect([runningMl(lump, 1), runningMl(lump, 0), runningMl(lump, -1), runningMl(drop, 1), runningMl(squeezeGelIn(drop, 5, 0.1), 1)]).toEqual([5, 0, 0, 0, 5]);
  });

  it('runs slower down a pocket that slants: at 60 degrees half its weight drives it', () => {
    const lump = squeezeGelIn(newInside(), 15, 0.1);
    const way = (down: number): number => 0.1 - runGel(lump, down, 0.1).lumps[0]!.toEndM;
    expect(way(0.5) / way(1)).toBeCloseTo(plugSpeed(ballRadiusM(15e-6), GEL_WEIGHT / 2) / plugSpeed(ballRadiusM(15e-6), GEL_WEIGHT), 9);
    expect(way(0.5)).toBeLessThan(0.5 * way(1));
  });

  it('is stroked down by fingers that pass it, not by others', () => {
    const drop = squeezeGelIn(newInside(), 0.3, 0.1);
    expect(strokeGel(drop, 0.08, 0)).toEqual(drop);
    expect(strokeGel(drop, 0.12, 0.03).lumps).toEqual([{ toEndM: 0.03, ml: 0.3 }]);
    expect(strokeGel(drop, 0.12, 0)).toMatchObject({ gelMl: 0.3, lumps: [] });
  });

  it('is none lost, lump after lump', () => {
    let now = newInside();
    for (const [ml, toEnd] of [[3, 0.1], [2, 0], [4, 0.2]] as const) now = after(1, squeezeGelIn(now, ml, toEnd));
    expect(now.gelMl + now.lumps.reduce((sum, { ml }) => sum + ml, 0)).toBeCloseTo(9, 12);
  });
});

describe('The layer under the face', () => {
  // 3 to 5 mL inside the cover: a vendor's guide, looked up. A whole sterile packet is about 20 mL (from memory).
  it.each([[0, 'tooLittle'], [0.3, 'tooLittle'], [3, 'right'], [4, 'right'], [5, 'right'], [20, 'tooMuch']] as const)('of %d mL is %s', (gelMl, amount) => {
    expect(gelLayer({ gelMl }, PROBE).amount).toBe(amount);
  });

  it('is volume over area until gel creeps up, and no thicker than what clings', () => {
    expect(gelLayer({ gelMl: 2 }, PROBE).layerM).toBeCloseTo(2e-6 / faceAreaM2(PROBE), 12);
    expect(gelLayer({ gelMl: 2 }, PROBE).creepM).toBe(0);
    expect(gelLayer({ gelMl: 8 }, PROBE).layerM).toBe(CLINGING_M);
    expect(gelLayer({ gelMl: 8 }, PROBE).creepM).toBeGreaterThan(gelLayer({ gelMl: 5 }, PROBE).creepM);
  });

  it('leaves film bare on the face when it is too little', () => {
    const shares = [0, 0.15, 0.3, 0.6, 1].map((gelMl) => gelLayer({ gelMl }, PROBE).wetted);
    expect(shares[0]).toBe(0);
    expect(shares[1]! * 2).toBeCloseTo(shares[2]!, 12);
    expect(shares[3]).toBeLessThan(1);
    expect(shares[4]).toBe(1);
  });
});
