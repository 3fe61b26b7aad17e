/** The words with a capital at the front. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** "1 break", "3 breaks". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}
