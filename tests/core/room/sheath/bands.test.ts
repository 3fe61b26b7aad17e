import { describe, expect, it } from 'vitest';
import { BAND, bandHoldN, bandPlace, filmHold, stretchOf, tensionN, turnsFor, wellBanded } from '../../../../src/core/room/sheath/bands.ts';
import { putBand, rollBand, takeBandOff } from '../../../../src/core/room/sheath/banding.ts';
import { pullFilm, slideSpeed } from '../../../../src/core/room/sheath/filmSlide.ts';
import { bagStrengthN, faceLoadN, loadFace } from '../../../../src/core/room/sheath/tear.ts';
import { girthM, sectionAt } from '../../../../src/core/room/sheath/headShape.ts';
import type { SheathInside } from '../../../../src/core/room/sheath/inside.ts';
import { PROBE, sheathWith } from './usualProbe.ts';

const HEAD = { alongM: 0.024, turns: turnsFor(0.024, PROBE) };
const HANDLE = { alongM: 0.13, turns: turnsFor(0.13, PROBE) };
const both = putBand(putBand(sheathWith(3), PROBE, HEAD)!, PROBE, HANDLE)!;

describe('A band', () => {
  it('pulls as rubber does: no pull at rest, Young’s modulus 3 G for small stretch, 7/4 G at double length', () => {
    // Treloar: engineering stress G (λ − 1/λ²).
    const at = (stretch: number): number => tensionN({ alongM: 0.05, turns: (stretch * BAND.restM) / girthM(sectionAt(PROBE, 0.05)) }, PROBE) / BAND.sectionM2;
    expect(at(0.9)).toBe(0);
    expect(at(1.0001) / 0.0001 / (3 * BAND.shearPa)).toBeCloseTo(1, 3);
    expect(at(2) / BAND.shearPa).toBeCloseTo(1.75, 9);
  });

  it('presses on any convex section with 2π times its tension', () => {
    // Against the corners of a polygon: a string with tension T that turns by α presses with 2 T sin(α / 2).
    const n = 4000;
    const outline = Array.from({ length: n }, (_, k): [number, number] => [0.02 * Math.cos((2 * Math.PI * k) / n), 0.0125 * Math.sin((2 * Math.PI * k) / n)]);
    let pressed = 0;
    outline.forEach(([x, y], k) => {
      const [[ax, ay], [bx, by]] = [outline[(k + n - 1) % n]!, outline[(k + 1) % n]!];
      const turn = Math.atan2(by - y, bx - x) - Math.atan2(y - ay, x - ax);
      pressed += 2 * Math.sin(Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) / 2);
    });
    // Friction 0.3 of dry film on the housing.
    expect(bandHoldN(HEAD, both, PROBE)).toBeCloseTo(0.3 * pressed * HEAD.turns * tensionN(HEAD, PROBE), 4);
  });

  it('is tight where it is wound for the girth, and slack when it is rolled to where the probe is thin', () => {
    expect(stretchOf(HEAD, PROBE)).toBeGreaterThan(1);
    expect(HANDLE.turns).toBeGreaterThan(HEAD.turns);
    const rolled = rollBand(both, PROBE, 0, 0.12)!;
    expect(tensionN(rolled.bands[1]!, PROBE)).toBe(0);
    expect(bandHoldN(rolled.bands[1]!, rolled, PROBE)).toBe(0);
  });

  it('rolls off over the face, and breaks if wound too tight', () => {
    expect(putBand(sheathWith(3), PROBE, { alongM: 0.002, turns: 1 })).toBeNull();
    expect(putBand(sheathWith(3), PROBE, { alongM: 0.05, turns: 6 })).toBeNull();
    expect(rollBand(both, PROBE, 0, 0)).toBeNull();
  });

  it('holds less where gel has crept under it', () => {
    const wet = { ...both, gelMl: 10 };
    expect(bandHoldN(HEAD, wet, PROBE)).toBeLessThan(0.5 * bandHoldN(HEAD, both, PROBE));
    expect(bandHoldN(HANDLE, wet, PROBE)).toBe(bandHoldN(HANDLE, both, PROBE));
  });
});

describe('Two bands at the right places', () => {
  it('are one behind the face and one at the handle, both tight', () => {
    expect([bandPlace(HEAD, PROBE), bandPlace(HANDLE, PROBE), bandPlace({ alongM: 0.06, turns: 1 }, PROBE)]).toEqual(['head', 'handle', 'between']);
    expect(wellBanded(both, PROBE)).toBe(true);
    expect(wellBanded(takeBandOff(both, 0), PROBE)).toBe(false);
    expect(wellBanded(takeBandOff(both, 1), PROBE)).toBe(false);
    expect(wellBanded({ ...both, bands: [HEAD, { ...HANDLE, turns: 1 }] }, PROBE)).toBe(false);
  });

  it('hold the film: toward the face what lies beyond the pull, toward the cord what lies before it', () => {
    const gel = filmHold(sheathWith(3), PROBE, 0.06, 'face');
    expect(filmHold(both, PROBE, 0.06, 'face')).toBeCloseTo(gel + bandHoldN(HANDLE, both, PROBE), 9);
    expect(filmHold(both, PROBE, 0.06, 'cord')).toBeCloseTo(gel + bandHoldN(HEAD, both, PROBE), 9);
    expect(filmHold(both, PROBE, 0.2, 'cord')).toBeCloseTo(gel + bandHoldN(HEAD, both, PROBE) + bandHoldN(HANDLE, both, PROBE), 9);
  });

  it('keep it from sliding under a pull with which it slides when one is forgotten', () => {
    const pull = { alongM: 0.06, pullN: 1.5, toward: 'face', gripN: 0 } as const;
    expect(slideSpeed(both, PROBE, pull)).toBe(0);
    expect(pullFilm(both, PROBE, pull, 1)).toEqual(both);
    expect(slideSpeed(takeBandOff(both, 1), PROBE, pull)).toBeGreaterThan(0.01);
    expect(slideSpeed(takeBandOff(both, 1), PROBE, { ...pull, pullN: 500 })).toBeLessThanOrEqual(0.4);
  });

  it('fingers that press it on to the probe hold it as well: Coulomb, 0.3 of dry film on both flanks', () => {
    const loose = sheathWith(3);
    const held = filmHold(loose, PROBE, 0.06, 'face') + 2 * 0.3 * 5;
    const speed = (pullN: number): number => slideSpeed(loose, PROBE, { alongM: 0.06, pullN, toward: 'face', gripN: 5 });
    expect(speed(held * 0.999)).toBe(0);
    expect(speed(held * 1.1)).toBeGreaterThan(0);
    expect(speed(held * 1.02)).toBeLessThan(speed(held * 1.1));
  });

  it('film is drawn toward the cord only until it is taut round the face', () => {
    const loose: SheathInside = { ...sheathWith(3), slackM: 0.01 };
    const pull = { alongM: 0.3, pullN: 2, toward: 'cord', gripN: 0 } as const;
    const taut = pullFilm(loose, PROBE, pull, 10);
    expect(taut.slackM).toBe(0);
    expect(pullFilm(taut, PROBE, pull, 10)).toEqual(taut);
  });

  it('keep film that bunches before the head band away from the face', () => {
    const beneath = { ...both, bands: [HEAD], bubbles: [{ sM: 0.03, ml: 0.05 }, { sM: 0.08, ml: 0.05 }] };
    const now = pullFilm(beneath, PROBE, { alongM: 0.11, pullN: 1, toward: 'face', gripN: 0 }, 0.1);
    expect(now.bubbles[0]).toEqual(beneath.bubbles[0]);
    expect(now.bubbles[1]!.sM).toBeLessThan(0.08);
  });
});

describe('A probe pushed at the closed end', () => {
  it('tears the film above its strength, and it stays torn', () => {
    const inside = sheathWith(3);
    expect(loadFace(inside, 40, 40)).toBe(inside);
    const torn = loadFace(inside, 40.1, 40);
    expect(torn.torn).toBe(true);
    expect(loadFace(torn, 0, 40).torn).toBe(true);
  });

  it('loads it only as far as something holds the film and nothing behind bears the push', () => {
    expect(faceLoadN(60, 100, 0)).toBe(60);
    expect(faceLoadN(60, 1.8, 0)).toBe(1.8);
    expect(faceLoadN(60, 100, 60)).toBe(0);
    expect(faceLoadN(0, 100, 5)).toBe(0);
  });

  // Low-density polyethylene, 8 to 20 MPa (tables of plastics, from memory), films of 40 to 75 µm: 97 mm of girth bear 31 to 146 N.
  it('tears thin film at tens of newtons', () => {
    for (const film of [40e-6, 50e-6, 75e-6]) {
      expect(bagStrengthN(film, PROBE)).toBeGreaterThan(8e6 * film * 0.09);
      expect(bagStrengthN(film, PROBE)).toBeLessThan(20e6 * film * 0.1);
    }
  });
});
