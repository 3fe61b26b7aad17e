import { expect, it } from 'vitest';
import { breakWords } from '../../../src/core/ledger/breakWords.ts';
import { log } from './log.ts';

const WORDS = { 'gloveL#1:fingers': 'left glove, fingers', 'railR:all': 'right rail', 'arm:outerR': 'right upper sleeve', 'site#1:all': 'site', 'bare:all': 'bare cord', 'drape#1:1': 'left drape' };

it('tells a break in one short sentence', () => {
  const room = log().tap('gloveL#1:fingers', 'railR:all').enter('arm:outerR', 'overField').tap('bare:all', 'drape#1:1').drift('toward');
  expect(room.ledger().breaks.map((known) => breakWords(known, WORDS))).toEqual([
    'Left glove, fingers on the right rail.',
    'Right upper sleeve over the field.',
    'Bare cord on the left drape.',
    'The drape slid over the site.',
  ]);
});
