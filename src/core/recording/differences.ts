/** One place at which a written result is not the replayed one, both as JSON text. */
export interface Difference {
  readonly path: string;
  readonly written: string;
  readonly replayed: string;
}

const DIFFERENCES_MAX = 10;
const TEXT_MAX = 80;

/** The first few places at which two JSON values differ; numbers must be equal to the last bit. */
export function differences(written: unknown, replayed: unknown): Difference[] {
  const found: Difference[] = [];
  compare('', written, replayed, found);
  return found;
}

function compare(path: string, written: unknown, replayed: unknown, found: Difference[]): void {
  if (found.length >= DIFFERENCES_MAX || written === replayed) return;
  if (!isBranch(written) || !isBranch(replayed) || Array.isArray(written) !== Array.isArray(replayed)) {
    found.push({ path, written: shown(written), replayed: shown(replayed) });
    return;
  }
  const [a, b] = [written as Record<string, unknown>, replayed as Record<string, unknown>];
  for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) compare(path === '' ? key : `${path}.${key}`, a[key], b[key], found);
}

const isBranch = (value: unknown): value is object => typeof value === 'object' && value !== null;

const shown = (value: unknown): string => (JSON.stringify(value) ?? 'nothing').slice(0, TEXT_MAX);
