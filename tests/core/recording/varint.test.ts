import { array, assert, integer, nat, property } from 'fast-check';
import { expect, it } from 'vitest';
import { decodeIntegers, decodeNaturals, encodeInteger, encodeNatural } from '../../../src/core/recording/varint.ts';

it('numbers come back as they went in', () => {
  const integers = property(array(integer({ min: -(2 ** 29), max: 2 ** 29 - 1 })), (numbers) => {
    expect(decodeIntegers(numbers.map(encodeInteger).join(''))).toEqual(numbers);
  });
  const naturals = property(array(nat({ max: 2 ** 30 - 1 })), (numbers) => {
    expect(decodeNaturals(numbers.map(encodeNatural).join(''))).toEqual(numbers);
  });
  assert(integers);
  assert(naturals);
});

it('differences of a slow hand take one character', () => {
  for (let difference = -16; difference <= 15; difference++) expect(encodeInteger(difference)).toHaveLength(1);
  expect(encodeInteger(16)).toHaveLength(2);
});

it('a text has one meaning: longer spellings, loose ends and foreign characters are refused', () => {
  for (const text of ['gA', 'g', 'Ag', '=', ' A', 'ggggggA', 'é']) expect(decodeNaturals(text)).toBeNull();
});
