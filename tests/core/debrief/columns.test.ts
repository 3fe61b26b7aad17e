import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bytesOf, packColumns, unpackColumns } from '../../../src/core/debrief/columns.ts';

const whole = fc.integer({ min: -32768, max: 32767 });

describe('Columns', () => {
  it('come out as they went in, whatever they hold', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }).chain((rows) => fc.tuple(fc.constant(rows), fc.array(fc.oneof(fc.constant(null), fc.array(whole, { minLength: rows, maxLength: rows }), fc.array(fc.integer({ min: -60, max: 60 }), { minLength: rows, maxLength: rows })), { maxLength: 12 }))), ([rows, columns]) => {
        const values = new Int16Array(rows * columns.length);
        columns.forEach((column, c) => { for (let r = 0; r < rows; r++) values[r * columns.length + c] = column?.[r] ?? 7; });
        expect(unpackColumns(packColumns(values, rows, columns.length))).toEqual(values);
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  it('take no more than they must: three bytes when nothing moves, one for a small step, two for a large one', () => {
    const bytes = (values: number[]): number => bytesOf(packColumns(Int16Array.from(values), values.length, 1));
    expect([bytes([5, 5, 5, 5]), bytes([5, 6, 4, 100]), bytes([5, 500, 5, 500])]).toEqual([3, 3 + 3, 3 + 6]);
  });
});
