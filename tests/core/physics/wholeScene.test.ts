import { describe, expect, it } from 'vitest';
import { buildBedScene } from '../../../src/bench/bedScene.ts';
import { ABUSED, HandScript, WORKING, type HandLimits } from '../../../src/bench/handScript.ts';
import { OwnEngine } from '../../../src/bench/ownEngine.ts';
import { SceneWatch } from '../../support/physics/sceneWatch.ts';

/** FULL=1 runs 20 seeds of 60 s each; without it fewer and shorter ones, to keep the suite quick. */
const full = process.env['FULL'] === '1';
const seconds = full ? 60 : 20;
const seeds = (short: number): number[] => Array.from({ length: full ? 20 : short }, (_, k) => k + 1);
const SETTLED = 60; // steps after which the scene is looked at: it starts out of balance

function watch(limits: HandLimits, seed: number, drapeNodes = 60, cordNodes = 50): { seen: SceneWatch; grips: number } {
  const engine = new OwnEngine();
  const scene = buildBedScene(engine, drapeNodes, cordNodes);
  const script = new HandScript(scene, limits, seed);
  const seen = new SceneWatch(scene, script);
  for (let k = 0; k < seconds * 120; k++) {
    script.drive();
    engine.step();
    if (k >= SETTLED) seen.look();
  }
  if (full) console.log(JSON.stringify({ seed, speed: limits.speed, drapeNodes, ...seen.summary(), grips: script.grips }));
  return { seen, grips: script.grips };
}

describe('the whole scene under working hands (1 m/s, 20 N, grips slip at 10 N)', () => {
  it.each(seeds(6))('stays sound, seed %i', (seed) => {
    const { seen, grips } = watch(WORKING, seed);
    expect(grips).toBeGreaterThan(0);
    expect(seen.notFinite).toBe(0);
    expect(seen.railSteps).toBe(0);
    expect(seen.crossingSteps).toBe(0);
    expect(seen.deepestInStatic).toBeLessThan(0.002);
    expect(seen.drapeStretch).toBeLessThan(0.01);
    expect(seen.cordStretch).toBeLessThan(0.01);
    expect(seen.lost).toBe(0);
  }, 600_000);
});

describe('the whole scene under abuse (2 m/s, 40 N)', () => {
  it.each(seeds(3))('holds together, seed %i', (seed) => {
    const { seen } = watch(ABUSED, seed);
    expect(seen.notFinite).toBe(0);
    expect(seen.railSteps).toBe(0);
    expect(seen.longestCrossing).toBeLessThan(60); // 0.5 s
    expect(seen.lost).toBe(0);
  }, 600_000);
});
