import { describe, expect, it } from 'vitest';
import { Rng } from '../../../src/core/base/rng.ts';

/** The generator written out a second time, from its definition with whole numbers of any size instead of Math.imul. */
function* byDefinition(seed: number): Generator<number> {
  const bits = (value: bigint): bigint => value & 0xffffffffn;
  for (let state = bits(BigInt(seed) + 0x6d2b79f5n); ; state = bits(state + 0x6d2b79f5n)) {
    let t = bits((state ^ (state >> 15n)) * (state | 1n));
    t ^= bits(t + bits((t ^ (t >> 7n)) * (t | 61n)));
    yield Number(t ^ (t >> 14n)) / 4294967296;
  }
}

describe('Random numbers', () => {
  it.each([0, 1, 7, 123456789, 4294967295])('follow their definition from seed %d on', (seed) => {
    const rng = new Rng(seed);
    const expected = byDefinition(seed);
    for (let k = 0; k < 1000; k++) expect(rng.next()).toBe(expected.next().value);
  });

  it('never change from one version to the next', () => {
    const rng = new Rng(1);
    expect([rng.next(), rng.next(), rng.next()]).toEqual([0.6270739405881613, 0.002735721180215478, 0.5274470399599522]);
  });

  it('go on where they were saved', () => {
    const rng = new Rng(42);
    for (let k = 0; k < 10; k++) rng.next();
    const saved = rng.save();
    const expected = [rng.next(), rng.next(), rng.next()];
    const other = new Rng(1);
    other.restore(saved);
    expect([other.next(), other.next(), other.next()]).toEqual(expected);
  });

  it('fill their range evenly', () => {
    const rng = new Rng(9);
    const tenths = Array<number>(10).fill(0);
    for (let k = 0; k < 100_000; k++) tenths[Math.floor(rng.between(-1, 1) * 5 + 5)]!++;
    // Ten cells of 10,000 with a standard deviation of 95: five of them on either side.
    for (const count of tenths) expect(Math.abs(count - 10_000)).toBeLessThan(475);
  });
});
