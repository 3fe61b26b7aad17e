/** Place of the last number that is at most `limit` in a rising list; −1 if there is none. */
export function lastAtMost(rising: ArrayLike<number>, limit: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle]! <= limit) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
