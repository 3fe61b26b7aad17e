import { describe, expect, it } from 'vitest';
import { StateHash } from '../../../src/core/base/hash.ts';
import { Rng } from '../../../src/core/base/rng.ts';

const ofNumbers = (...values: number[]): string => new StateHash().addNumbers(Float64Array.from(values)).digest();
const ofText = (text: string): string => new StateHash().addText(text).digest();

describe('The state hash', () => {
  it('never changes from one version to the next', () => {
    expect(ofText('sterile field')).toBe('bf8c3b8628e31742');
    expect(ofNumbers(0.1, -2, 1e300)).toBe('dcae8d86fe0d8c64');
  });

  it('is the same however the numbers come', () => {
    const [one, all] = [new StateHash(), new StateHash()];
    for (const value of [0.1, -2, 1e300]) one.addNumber(value);
    all.addNumbers(Float64Array.from([0.1, -2, 1e300]));
    expect(one.digest()).toBe(all.digest());
  });

  it('tells the last bit, the order and the end of texts', () => {
    expect(ofNumbers(0.3)).not.toBe(ofNumbers(0.1 + 0.2));
    expect(ofNumbers(1, 2)).not.toBe(ofNumbers(2, 1));
    expect(new StateHash().addText('ab').addText('c').digest()).not.toBe(new StateHash().addText('a').addText('bc').digest());
    expect(ofText('')).not.toBe(new StateHash().digest());
  });

  it('takes −0 for 0, which compare equal', () => {
    expect(new StateHash().addNumber(-0).digest()).toBe(new StateHash().addNumber(0).digest());
  });

  it('gives the digest so far as often as asked and goes on', () => {
    const hash = new StateHash().addInt(1);
    expect(hash.digest()).toBe(hash.digest());
    expect(hash.addInt(2).digest()).toBe(new StateHash().addInt(1).addInt(2).digest());
  });

  it('gives no two of 100,000 near values the same digest', () => {
    const digests = new Set<string>();
    for (let k = 0; k < 100_000; k++) digests.add(ofNumbers(k / 1000));
    expect(digests.size).toBe(100_000);
  });

  it('changes about half of its bits with one bit of its input', () => {
    const rng = new Rng(3);
    let changed = 0;
    for (let k = 0; k < 1000; k++) {
      const value = Math.floor(rng.between(0, 2 ** 31));
      const [a, b] = [value, value ^ (1 << Math.floor(rng.between(0, 31)))].map((input) => BigInt(`0x${new StateHash().addInt(input).digest()}`));
      changed += [...(a! ^ b!).toString(2)].filter((bit) => bit === '1').length;
    }
    expect(changed / 1000).toBeGreaterThan(28);
    expect(changed / 1000).toBeLessThan(36);
  });

  it('is sixteen hexadecimal digits', () => {
    for (const text of ['', 'a', '\u{fffd}']) expect(ofText(text)).toMatch(/^[0-9a-f]{16}$/);
  });
});
