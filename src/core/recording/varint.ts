/**
 * Whole numbers as text: five bits a character, lowest first, with a sixth bit that says that more follow. Small numbers, which
 * differences of positions nearly always are, take one character.
 */
const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+-';
const VALUES = new Map([...DIGITS].map((digit, value) => [digit, value]));
const MORE = 32;
/** Six characters hold 30 bits; longer numbers do not occur. */
const DIGITS_MAX = 6;

/** Text of a whole number from 0 to 2^30 − 1. */
export function encodeNatural(value: number): string {
  let text = '';
  let rest = value;
  do {
    const low = rest % MORE;
    rest = (rest - low) / MORE;
    text += DIGITS[rest > 0 ? low + MORE : low];
  } while (rest > 0);
  return text;
}

/** Text of a whole number from −2^29 to 2^29 − 1: 0, −1, 1, −2, 2 … become 0, 1, 2, 3, 4 … */
export const encodeInteger = (value: number): string => encodeNatural(value < 0 ? -2 * value - 1 : 2 * value);

/** The numbers of a text, or null when it is not one that `encodeNatural` writes. */
export function decodeNaturals(text: string): number[] | null {
  const numbers: number[] = [];
  let value = 0;
  let scale = 1;
  let digits = 0;
  for (const character of text) {
    const digit = VALUES.get(character);
    if (digit === undefined || ++digits > DIGITS_MAX) return null;
    value += (digit % MORE) * scale;
    scale *= MORE;
    if (digit >= MORE) continue;
    if (digit === 0 && digits > 1) return null;
    numbers.push(value);
    value = 0;
    scale = 1;
    digits = 0;
  }
  return digits === 0 ? numbers : null;
}

/** The numbers of a text that `encodeInteger` wrote, or null when it is not one. */
export const decodeIntegers = (text: string): number[] | null =>
  decodeNaturals(text)?.map((value) => (value % 2 === 0 ? value / 2 : -(value + 1) / 2)) ?? null;
