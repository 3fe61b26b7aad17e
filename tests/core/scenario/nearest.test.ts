import { describe, expect, it } from 'vitest';
import { nearest } from '../../../src/core/scenario/nearest.ts';

describe('The nearest known word', () => {
  it.each([
    ['xm', 'xM'],
    ['topM', 'topM'],
    ['tpoM', 'topM'],
    ['width', 'widthM'],
    ['WIDTHM', 'widthM'],
    ['lengthOfTheWholeOfTheSheet', null],
    ['zzzzzz', null],
  ])('to %s is %s', (word, expected) => {
    expect(nearest(word, ['xM', 'topM', 'widthM'])).toBe(expected);
  });

  it('is none in an empty list', () => {
    expect(nearest('x', [])).toBeNull();
  });
});
