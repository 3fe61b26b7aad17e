/** The part of a column from `start` on, or `before` when that holds the same numbers. */
export function keptRow(column: Float64Array, start: number, size: number, before: Float64Array | undefined): Float64Array {
  return before?.length === size && isPart(before, column, start) ? before : column.slice(start, start + size);
}

/** The part of a list from `start` on, or `before` when that holds the same values. */
export function keptList<Value>(list: readonly Value[], start: number, size: number, before: readonly Value[] | undefined): readonly Value[] {
  return before?.length === size && isPart(before, list, start) ? before : list.slice(start, start + size);
}

/** A record, or `before` when that has the very same values in all its fields. */
export function keptFields<Fields extends object>(now: Fields, before: Fields | undefined): Fields {
  if (before === undefined) return now;
  for (const name in now) if (now[name] !== before[name]) return now;
  return before;
}

function isPart<Value>(part: ArrayLike<Value>, whole: ArrayLike<Value>, start: number): boolean {
  for (let k = 0; k < part.length; k++) if (part[k] !== whole[start + k]) return false;
  return true;
}
