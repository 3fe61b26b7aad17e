/** Number of letters to change, add or leave out to turn one word into the other, whatever their case. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, k) => k);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let k = 1; k <= b.length; k++) {
      const change = a[i - 1] === b[k - 1] ? 0 : 1;
      next.push(Math.min(row[k]! + 1, next[k - 1]! + 1, row[k - 1]! + change));
    }
    row = next;
  }
  return row[b.length]!;
}

/** Word of the list that is nearest to `word` in spelling, the first of equals; null if none has half of its letters in common. */
export function nearest(word: string, list: readonly string[]): string | null {
  const typed = word.slice(0, 40).toLowerCase();
  let best: string | null = null;
  let bestDistance = Math.max(2, Math.ceil(typed.length / 2)) + 0.5;
  for (const candidate of list) {
    const d = distance(typed, candidate.toLowerCase());
    if (d < bestDistance) {
      best = candidate;
      bestDistance = d;
    }
  }
  return best;
}
