/**
 * Rows of whole numbers (Int16), packed by column: a column that stays as it is takes one number, one that changes by small steps one
 * byte a row, any other two bytes a row. Typed arrays alone, so that it can be handed to another thread.
 */
export interface PackedColumns {
  readonly rows: number;
  readonly first: Int16Array;
  /** For each column STILL, SMALL or WHOLE. */
  readonly kinds: Uint8Array;
  /** Steps from row to row, column by column. */
  readonly small: Int8Array;
  /** Values from the second row on, column by column. */
  readonly whole: Int16Array;
}

const STILL = 0;
const SMALL = 1;
const WHOLE = 2;

/** Packs `rows` rows of `width` numbers that stand one after the other. */
export function packColumns(values: Int16Array, rows: number, width: number): PackedColumns {
  const kinds = new Uint8Array(width);
  const count = [0, 0, 0];
  for (let c = 0; c < width; c++) {
    kinds[c] = kindOf(values, rows, width, c);
    count[kinds[c]!]!++;
  }
  const small = new Int8Array(count[SMALL]! * (rows - 1));
  const whole = new Int16Array(count[WHOLE]! * (rows - 1));
  let s = 0;
  let w = 0;
  for (let c = 0; c < width; c++) {
    if (kinds[c] === STILL) continue;
    for (let r = 1; r < rows; r++) {
      const value = values[r * width + c]!;
      if (kinds[c] === SMALL) small[s++] = value - values[(r - 1) * width + c]!;
      else whole[w++] = value;
    }
  }
  return { rows, first: values.slice(0, width), kinds, small, whole };
}

function kindOf(values: Int16Array, rows: number, width: number, column: number): number {
  let kind = STILL;
  for (let r = 1; r < rows; r++) {
    const step = values[r * width + column]! - values[(r - 1) * width + column]!;
    if (step < -128 || step > 127) return WHOLE;
    if (step !== 0) kind = SMALL;
  }
  return kind;
}

/** The rows again, one after the other. */
export function unpackColumns({ rows, first, kinds, small, whole }: PackedColumns): Int16Array {
  const width = first.length;
  const values = new Int16Array(rows * width);
  let s = 0;
  let w = 0;
  for (let c = 0; c < width; c++) {
    let value = first[c]!;
    values[c] = value;
    const kind = kinds[c];
    for (let r = 1; r < rows; r++) {
      if (kind === SMALL) value += small[s++]!;
      else if (kind === WHOLE) value = whole[w++]!;
      values[r * width + c] = value;
    }
  }
  return values;
}

/** Memory that it takes, in bytes. */
export const bytesOf = ({ first, kinds, small, whole }: PackedColumns): number => first.byteLength + kinds.byteLength + small.byteLength + whole.byteLength;
