import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roomUnderFaceMl, takeAirIn } from '../../../../src/core/room/sheath/airIntake.ts';
import { coupledShare, coveredByAir, squeeze, stroke, ventAir } from '../../../../src/core/room/sheath/air.ts';
import { seals } from '../../../../src/core/room/sheath/bands.ts';
import { putBand, rollBand } from '../../../../src/core/room/sheath/banding.ts';
import { bubbleHalfM, gapM } from '../../../../src/core/room/sheath/bubble.ts';
import { pullFilm } from '../../../../src/core/room/sheath/filmSlide.ts';
import { alongFromArc, arcFromAlong } from '../../../../src/core/room/sheath/fromFace.ts';
import { NEEDED_LAYER_M } from '../../../../src/core/room/sheath/gelFlow.ts';
import { faceAreaM2, footprint, sectionAt } from '../../../../src/core/room/sheath/headShape.ts';
import type { SheathInside } from '../../../../src/core/room/sheath/inside.ts';
import { airMl, PROBE, sheathWith } from './usualProbe.ts';

const DEG = Math.PI / 180;
const TEN_N = 10;

describe('Air taken along when the face goes down', () => {
  // Against the heights of the raised face added up strip by strip.
  it.each([0, 5, 15, 40])('is taken from the room under a face tilted by %d degrees', (degrees) => {
    const [from, to] = footprint(PROBE);
    const depth = faceAreaM2(PROBE) / (to - from);
    const n = 10000;
    let volume = 0;
    for (let k = 0; k < n; k++) volume += ((depth * (to - from)) / n) * (NEEDED_LAYER_M + (to - from) * ((k + 0.5) / n) * Math.tan(degrees * DEG));
    expect(roomUnderFaceMl(PROBE, degrees * DEG) / (volume * 1e6)).toBeCloseTo(1, 6);
  });

  it('is none with enough gel and an upright probe', () => {
    expect(takeAirIn(sheathWith(4), PROBE, 0).bubbles).toEqual([]);
    expect(coveredByAir(takeAirIn(sheathWith(4), PROBE, 0), PROBE)).toBe(0);
  });

  it('is what gel does not fill: more with less gel and more with more tilt', () => {
    const air = (gelMl: number, degrees: number): number => airMl(takeAirIn(sheathWith(gelMl), PROBE, degrees * DEG));
    for (const [gelMl, degrees] of [[2, 20], [0.5, 10], [0, 0]] as const) expect(air(gelMl, degrees)).toBeCloseTo(roomUnderFaceMl(PROBE, degrees * DEG) - gelMl, 9);
    expect(air(4, 30)).toBeGreaterThan(air(4, 22));
    expect(air(2, 20)).toBeGreaterThan(air(3, 20));
    expect(air(2, -20)).toBeCloseTo(air(2, 20), 12);
  });

  it('lies under the raised edge, or under both of an upright face', () => {
    const [, edge] = footprint(PROBE);
    const raised = takeAirIn(sheathWith(4.2), PROBE, 20 * DEG).bubbles;
    expect(raised).toHaveLength(1);
    expect(raised[0]!.sM + bubbleHalfM(raised[0]!, sheathWith(4.2), PROBE)).toBeCloseTo(edge, 9);
    expect(takeAirIn(sheathWith(4.2), PROBE, -20 * DEG).bubbles[0]!.sM).toBeCloseTo(-raised[0]!.sM, 12);
    const upright = takeAirIn(sheathWith(0.5), PROBE, 0).bubbles;
    expect(upright.map(({ sM }) => Math.sign(sM))).toEqual([-1, 1]);
  });
});

describe('What a bubble covers', () => {
  it('holds its volume in the gap as ball, disc or strip, and grows without a jump', () => {
    const inside = sheathWith(2);
    const gap = gapM(0, inside, PROBE);
    const depth = sectionAt(PROBE, 0).halfDepthM;
    const half = (ml: number): number => bubbleHalfM({ sM: 0, ml }, inside, PROBE);
    expect((4 / 3) * Math.PI * half(0.001) ** 3 * 1e6).toBeCloseTo(0.001, 9);
    expect(Math.PI * half(0.3) ** 2 * gap * 1e6).toBeCloseTo(0.3, 9);
    expect(2 * half(3) * 2 * depth * gap * 1e6).toBeCloseTo(3, 9);
    for (let ml = 0.002; ml < 4; ml *= 1.02) {
      expect(half(ml * 1.02)).toBeGreaterThanOrEqual(half(ml));
      expect(half(ml * 1.02) - half(ml)).toBeLessThan(0.021 * half(ml) + 1e-9);
    }
  });

  it('is a part of the footprint only where it lies under it', () => {
    const part = (...bubbles: [number, number][]): number => coveredByAir(sheathWith(4, ...bubbles), PROBE);
    const width = (2 * bubbleHalfM({ sM: 0, ml: 0.1 }, sheathWith(4), PROBE)) / 0.038;
    expect(part([0, 0.1])).toBeCloseTo(width, 9);
    expect(part([-0.009, 0.1], [0.009, 0.1])).toBeCloseTo(2 * width, 9);
    expect(part([0.019, 0.1])).toBeCloseTo(width / 2, 9);
    expect(part([0.06, 0.1])).toBe(0);
    expect(part([0, 50])).toBe(1);
  });

  it('spoils the view as bare film does, whichever takes more', () => {
    expect(coupledShare(sheathWith(4), PROBE)).toBe(1);
    expect(coupledShare(sheathWith(0), PROBE)).toBe(0);
    expect(coupledShare(sheathWith(4, [0, 0.1]), PROBE)).toBeCloseTo(1 - coveredByAir(sheathWith(4, [0, 0.1]), PROBE), 12);
  });
});

describe('A hand that squeezes along the film', () => {
  it('drives a bubble off the footprint, ahead of it up the flank', () => {
    const before = sheathWith(4, [0.008, 0.2]);
    const now = squeeze(before, PROBE, 0, 0.03, TEN_N);
    expect(coveredByAir(before, PROBE)).toBeGreaterThan(0.1);
    expect(coveredByAir(now, PROBE)).toBe(0);
    expect(now.bubbles[0]!.sM - bubbleHalfM(now.bubbles[0]!, now, PROBE)).toBeCloseTo(arcFromAlong(PROBE, 0.03), 4);
    expect(airMl(now)).toBeCloseTo(0.2, 12);
  });

  it('drives it back under the face in the other direction', () => {
    const away = sheathWith(4, [0.05, 0.2], [-0.05, 0.2]);
    const now = squeeze(away, PROBE, 0.08, 0, TEN_N);
    expect(coveredByAir(now, PROBE)).toBeGreaterThan(0.2);
  });

  it('leaves what is not in its way', () => {
    const inside = sheathWith(4, [0.005, 0.1]);
    expect(squeeze(inside, PROBE, 0.03, 0.1, TEN_N)).toEqual(inside);
    const far = sheathWith(4, [0.1, 0.1]);
    expect(squeeze(far, PROBE, 0, 0.02, TEN_N)).toEqual(far);
  });

  it('drives on its own side of the film alone if it is a finger', () => {
    const now = stroke(sheathWith(4, [-0.01, 0.1], [0.01, 0.1]), PROBE, 0, 0.06, TEN_N);
    expect(now.bubbles[0]).toEqual({ sM: -0.01, ml: 0.1 });
    expect(now.bubbles[1]!.sM).toBeGreaterThan(0.06);
  });

  // Plug of yield-stress fluid between walls, textbook statics: Δp t = 2 τy L; with L = 2 · 11 mm or so and t = 1 mm a few kPa.
  it('needs force: a bubble slips below fingers that press too little', () => {
    const inside = sheathWith(4, [0.05, 0.5]);
    expect(squeeze(inside, PROBE, 0.02, 0.09, 0.3)).toEqual(inside);
    expect(squeeze(inside, PROBE, 0.02, 0.09, 3).bubbles[0]!.sM).toBeGreaterThan(0.09);
  });

  it('gathers bubbles on its way into one', () => {
    const now = squeeze(sheathWith(4, [0.002, 0.1], [0.012, 0.05]), PROBE, 0, 0.03, TEN_N);
    expect(now.bubbles.map(({ ml }) => ml)).toEqual([expect.closeTo(0.15, 12)]);
  });

  it('lets it out at the open end', () => {
    const now = squeeze(sheathWith(4, [0.002, 0.1]), PROBE, 0, 1.2, TEN_N);
    expect(ventAir(now, PROBE, 1.2).bubbles).toEqual([]);
    expect(ventAir(sheathWith(4, [-0.1, 0.1]), PROBE, 1.2).bubbles).toHaveLength(1);
  });
});

describe('Air and bands', () => {
  const HEAD_BAND = { alongM: 0.024, turns: 1 };
  const loose = squeeze(sheathWith(4, [0.008, 0.2], [-0.01, 0.1]), PROBE, 0, 0.05, TEN_N);
  const banded = putBand(loose, PROBE, HEAD_BAND)!;

  it('air squeezed out before the band is put on cannot come back past it', () => {
    expect(coveredByAir(squeeze(banded, PROBE, 0.12, 0, TEN_N), PROBE)).toBe(0);
    expect(coveredByAir(squeeze(loose, PROBE, 0.12, 0, TEN_N), PROBE)).toBeGreaterThan(0);
  });

  it('air that is under the face when the band goes on cannot be squeezed past it either', () => {
    const trapped = putBand(sheathWith(4, [0.008, 0.2]), PROBE, HEAD_BAND)!;
    const now = squeeze(trapped, PROBE, 0, 0.1, TEN_N);
    expect(alongFromArc(PROBE, now.bubbles[0]!.sM)).toBeLessThan(HEAD_BAND.alongM);
  });

  it('a band parts the air that it comes down on, by what lies on either side', () => {
    const seal = arcFromAlong(PROBE, HEAD_BAND.alongM);
    const inside = sheathWith(4, [seal - 0.002, 0.4]);
    const half = bubbleHalfM(inside.bubbles[0]!, inside, PROBE);
    const [within, beyond] = putBand(inside, PROBE, HEAD_BAND)!.bubbles;
    expect(within!.ml / 0.4).toBeCloseTo((half + 0.002) / (2 * half), 9);
    expect(within!.ml + beyond!.ml).toBeCloseTo(0.4, 12);
    expect(within!.sM).toBeLessThan(seal);
    expect(beyond!.sM).toBeGreaterThan(seal);
  });

  it('a tight band that is rolled drives the air before it', () => {
    const rolled = rollBand(putBand(sheathWith(4, [0.06, 0.1], [-0.06, 0.1]), PROBE, HEAD_BAND)!, PROBE, 0, 0.06)!;
    expect(rolled.bands).toEqual([{ ...HEAD_BAND, alongM: 0.06 }]);
    expect(rolled.bubbles.map(({ sM }) => alongFromArc(PROBE, sM) > 0.06)).toEqual([true, true]);
    expect(airMl(rolled)).toBeCloseTo(0.2, 12);
  });

  it('a slack band seals nothing', () => {
    const slack = putBand(loose, PROBE, { alongM: 0.11, turns: 1 })!;
    expect(seals(slack, PROBE)).toEqual([]);
  });

  it('without a band handling lets air creep back, half as far as the film goes, and only while it is handled', () => {
    const pull = { alongM: 0.11, pullN: 0.3, toward: 'face', gripN: 0 } as const;
    const handled = (inside: SheathInside): SheathInside => {
      let now = inside;
      for (let k = 0; k < 60; k++) now = pullFilm(now, PROBE, pull, 1 / 120);
      return now;
    };
    const near = squeeze(sheathWith(4, [0.008, 0.2]), PROBE, 0, 0.03, TEN_N);
    const now = handled(near);
    const film = now.slackM;
    expect(film).toBeGreaterThan(0);
    expect(near.bubbles[0]!.sM - now.bubbles[0]!.sM).toBeCloseTo(film / 2, 9);
    expect(pullFilm(near, PROBE, { ...pull, pullN: 0 }, 10)).toEqual(near);
    let later = now;
    for (let k = 0; k < 60 && coveredByAir(later, PROBE) === 0; k++) later = handled(later);
    expect(coveredByAir(later, PROBE)).toBeGreaterThan(0);
    const kept = putBand(near, PROBE, { alongM: 0.13, turns: 5 })!;
    expect(handled(kept)).toEqual(kept);
  });
});

describe('A sheath from gel to view', () => {
  const HANDLED = [0.05, 0.08, 0.11].map((alongM) => ({ alongM, pullN: 1.2, toward: 'face', gripN: 0 }) as const);
  const entered = takeAirIn(sheathWith(3.5), PROBE, 20 * DEG);
  const squeezed = squeeze(entered, PROBE, 0, 0.03, TEN_N);
  const banded = putBand(putBand(squeezed, PROBE, { alongM: 0.024, turns: 1 })!, PROBE, { alongM: 0.13, turns: 5 })!;
  const used = (inside: SheathInside): SheathInside => Array.from({ length: 100 }).reduce<SheathInside>((now) => HANDLED.reduce((then, pull) => pullFilm(then, PROBE, pull, 0.01), now), inside);

  it('is spoiled by a tilted entry, cleared by squeezing, and stays clear in use with both bands', () => {
    expect(coupledShare(entered, PROBE)).toBeLessThan(0.8);
    expect(coupledShare(squeezed, PROBE)).toBe(1);
    expect(used(banded)).toEqual(banded);
  });

  it('is spoiled again in use with both bands forgotten', () => {
    expect(coupledShare(used(squeezed), PROBE)).toBeLessThan(0.9);
  });
});

describe('Whatever is done', () => {
  const action = fc.oneof(
    fc.record({ kind: fc.constant('squeeze' as const), from: fc.double({ min: 0, max: 0.3, noNaN: true }), to: fc.double({ min: 0, max: 0.3, noNaN: true }), n: fc.double({ min: 0.1, max: 20, noNaN: true }) }),
    fc.record({ kind: fc.constant('pull' as const), from: fc.double({ min: 0.01, max: 0.3, noNaN: true }), n: fc.double({ min: 0, max: 5, noNaN: true }), toward: fc.constantFrom('face' as const, 'cord' as const) }),
    fc.record({ kind: fc.constant('wipe' as const), from: fc.double({ min: -0.05, max: 0.05, noNaN: true }), to: fc.double({ min: -0.05, max: 0.05, noNaN: true }) }),
  );
  const volumes = fc.array(fc.tuple(fc.double({ min: -0.1, max: 0.1, noNaN: true }), fc.double({ min: 0.001, max: 1, noNaN: true })), { maxLength: 5 });

  it('no air is lost or made, none passes a tight band, and the state is plain data in order', () => {
    fc.assert(
      fc.property(volumes, fc.double({ min: 0, max: 10, noNaN: true }), fc.array(action, { maxLength: 12 }), fc.constantFrom([0.024], [0.024, 0.03]), (bubbles, gelMl, actions, places) => {
        let now = places.reduce((inside, alongM) => putBand(inside, PROBE, { alongM, turns: 1 })!, sheathWith(gelMl, ...bubbles));
        const seal = arcFromAlong(PROBE, 0.024);
        const within = ({ bubbles }: SheathInside): number => bubbles.reduce((sum, { sM, ml }) => (Math.abs(sM) < seal ? sum + ml : sum), 0);
        const [all, inner] = [airMl(now), within(now)];
        for (const act of actions) {
          if (act.kind === 'squeeze') now = squeeze(now, PROBE, act.from, act.to, act.n);
          else if (act.kind === 'wipe') now = stroke(now, PROBE, act.from, act.to, 10);
          else now = pullFilm(now, PROBE, { alongM: act.from, pullN: act.n, toward: act.toward, gripN: 0 }, 0.1);
        }
        expect(airMl(now)).toBeCloseTo(all, 9);
        expect(within(now)).toBeCloseTo(inner, 9);
        for (let k = 1; k < now.bubbles.length; k++) expect(now.bubbles[k]!.sM).toBeGreaterThanOrEqual(now.bubbles[k - 1]!.sM);
        expect(coveredByAir(now, PROBE)).toBeLessThanOrEqual(1);
        expect(JSON.parse(JSON.stringify(now))).toEqual(now);
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
