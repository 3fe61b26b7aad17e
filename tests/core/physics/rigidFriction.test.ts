import { describe, expect, it } from 'vitest';
import { stoppingDistance } from '../../support/physics/references.ts';
import { slide, type Slider } from '../../support/physics/rigidExperiments.ts';

const FRICTIONS = [0.2, 0.4, 0.6];

describe('a block on an incline', () => {
  const cases = FRICTIONS.flatMap((friction) => (['box', 'tilted box', 'capsule'] as Slider[]).map((slider) => [slider, friction] as const));

  it.each(cases)('(%s, friction %f) slips within 2 % of atan µ', (slider, friction) => {
    const angle = Math.atan(friction); // angle of friction, Coulomb
    expect(slide({ angle: 0.98 * angle, friction, slider, seconds: 2 }).speed).toBeLessThan(0.001);
    const steep = slide({ angle: 1.02 * angle, friction, slider, seconds: 2 });
    const pull = 9.81 * (Math.sin(1.02 * angle) - friction * Math.cos(1.02 * angle)); // Newton along the plane
    expect(steep.speed / (pull * 2.25)).toBeGreaterThan(0.7);
    expect(steep.speed / (pull * 2.25)).toBeLessThan(1.1);
  });

  it.each(cases)('(%s, friction %f) does not creep at half that angle', (slider, friction) => {
    const { way } = slide({ angle: Math.atan(friction) / 2, friction, slider, settleSeconds: 2, seconds: 15 });
    expect(way).toBeLessThan(1e-6); // it must stay: 0.001 mm in 15 s, without help from sleeping
  });
});

describe('a sliding block', () => {
  const cases = FRICTIONS.flatMap((friction) => [0.04, 0.5, 5].map((massKg) => [massKg, friction] as const));

  it.each(cases)('(%f kg, friction %f) stops from 1.5 m/s within 2 % of v²/(2µg)', (massKg, friction) => {
    const { way, speed } = slide({ angle: 0, friction, massKg, settleSeconds: 0.1, seconds: 3, speed: 1.5 });
    expect(Math.abs(way / stoppingDistance(1.5, friction) - 1)).toBeLessThan(0.02);
    expect(speed).toBeLessThan(1e-6);
  });
});
