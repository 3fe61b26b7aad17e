/** Something that must not occur in the core, with what to use instead. */
export interface Ban {
  readonly found: RegExp;
  readonly use: string;
}

const own = (names: string, use: string): Ban => ({ found: new RegExp(`\\bMath\\.(?:${names})\\b`), use });

/**
 * A run must give the same bits in every engine and whenever it is played: no function that engines round differently, no chance,
 * no clock, no language of the machine, and nothing of a browser.
 */
export const BANS: readonly Ban[] = [
  own('sin|cos|tan|asin|acos|atan|atan2|exp|hypot', 'the function of that name in base/portableMath.ts (length for hypot)'),
  own('sinh|cosh|tanh|asinh|acosh|atanh|expm1|log|log1p|log2|log10|cbrt|pow', 'sums and products, or a new portable function in base/portableMath.ts'),
  { found: /\*\*/, use: 'products (x * x), since engines round powers differently' },
  own('random', 'Rng of base/rng.ts, seeded by the run'),
  { found: /\bDate\b|\bperformance\b/, use: 'the step number, or a time given by the caller' },
  { found: /\b(?:setTimeout|setInterval|requestAnimationFrame|queueMicrotask)\b/, use: 'the step number' },
  { found: /\blocaleCompare\b|\btoLocale\w+|\bIntl\b/, use: 'comparison with <, since languages differ between machines' },
  { found: /\b(?:document|window|globalThis|navigator|localStorage|indexedDB|fetch)\b[.(]/, use: 'a value given by the caller' },
  { found: /\bconsole\b/, use: 'a value returned to the caller' },
  { found: /\bprocess\.|\brequire\(/, use: 'a value given by the caller' },
];
