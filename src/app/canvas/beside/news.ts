/** Fields of records, and elements of lists by their index, that are not as before. */
type Changes = { [field: string]: unknown };

const isRecord = (value: unknown): value is Changes => typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/**
 * What of plain data is not as it was: records and lists by the parts that differ, everything else whole; `undefined` when all is the
 * same. Most of a picture of the room is as in the one before, and copying it to another thread costs more than comparing. Records of
 * the same kind must always have the same fields, none of them undefined.
 */
export function newsOf(value: unknown, before: unknown): unknown {
  if (value === before) return undefined;
  if (value instanceof Float64Array) return before instanceof Float64Array && sameRow(value, before) ? undefined : value;
  if (Array.isArray(value)) return Array.isArray(before) && value.length === before.length ? elementChanges(value, before) : value;
  return isRecord(value) && isRecord(before) ? changesOf(value, before) : value;
}

/** The data that `news` was made from, put together again with what was there before. Parts without news stay the very same. */
export function withNews(before: unknown, news: unknown): unknown {
  if (news === undefined) return before;
  if (!isRecord(news)) return news;
  if (!Array.isArray(before) && !isRecord(before)) return news;
  const whole = (Array.isArray(before) ? [...(before as unknown[])] : { ...before }) as Changes;
  for (const field in news) whole[field] = withNews(whole[field], news[field]);
  return whole;
}

function changesOf(value: Changes, before: Changes): Changes | undefined {
  let changes: Changes | undefined;
  for (const field in value) {
    const news = newsOf(value[field], before[field]);
    if (news !== undefined) (changes ??= {})[field] = news;
  }
  return changes;
}

/** Lists are gone through by index, several times faster than by the names of their elements. */
function elementChanges(value: readonly unknown[], before: readonly unknown[]): Changes | undefined {
  let changes: Changes | undefined;
  for (let i = 0; i < value.length; i++) {
    const news = newsOf(value[i], before[i]);
    if (news !== undefined) (changes ??= {})[i] = news;
  }
  return changes;
}

function sameRow(a: Float64Array, b: Float64Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}
