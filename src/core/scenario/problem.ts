/** One thing that is wrong with a scenario file. */
export interface Problem {
  /** Place in the file (`items[2].xM`), '' for the file as a whole. */
  readonly path: string;
  /** What was found, what is allowed and what to do, in plain words. */
  readonly message: string;
}

export const ADVICE = 'Correct the file and open it again.';

/** "x is 3; allowed is 1 to 2. Correct the file and open it again." */
export const problem = (path: string, found: string, allowed: string): Problem => ({ path, message: `${path} is ${found}; allowed is ${allowed}. ${ADVICE}` });

/** A value that may be this much at most; `why` says what the limit is or what it is for. */
export const atMost = (path: string, value: number, limit: number, why: string): readonly Problem[] => {
  const high = roundedDown(limit);
  return value > high ? [problem(path, String(value), `${high} at most, ${why}`)] : [];
};

/** A value that must be this much at least. */
export const atLeast = (path: string, value: number, limit: number, why: string): readonly Problem[] => {
  const low = roundedUp(limit);
  return value < low ? [problem(path, String(value), `${low} at least, ${why}`)] : [];
};

/** Greatest whole number of millimetres that is not more than a length in metres, so that a limit may be typed as it is shown. */
export const roundedDown = (metres: number): number => Math.floor(metres * 1000 + 1e-6) / 1000;
/** Least whole number of millimetres that is not less than a length in metres. */
export const roundedUp = (metres: number): number => Math.ceil(metres * 1000 - 1e-6) / 1000;

/** Millimetre exact, without trailing zeros: 0.1 + 0.2 reads 0.3. */
export const metresText = (metres: number): string => String(Math.round(metres * 1000) / 1000 + 0);

/** A value of the file as it is shown in a sentence. */
export function valueText(value: unknown): string {
  if (value === undefined) return 'missing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value !== 'string') return String(value);
  return JSON.stringify(value.length > 40 ? `${value.slice(0, 40)}…` : value);
}

/** `['items', 2, 'xM']` as `items[2].xM`; names that are no plain words are quoted. */
export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const step of path) {
    if (typeof step === 'number') text += `[${step}]`;
    else {
      const name = String(step);
      const shown = /^[A-Za-z0-9_$-]{1,40}$/.test(name) ? name : valueText(name);
      text += text === '' ? shown : `.${shown}`;
    }
  }
  return text;
}
