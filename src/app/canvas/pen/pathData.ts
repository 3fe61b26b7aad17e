/** Drawing operations of a path; each takes the next points of `xy`. */
export const MOVE = 0;
export const LINE = 1;
export const CUBIC = 2;
export const QUADRATIC = 3;
export const CLOSE = 4;

/** A path as operations and a flat list of x, y. */
export interface PathData {
  readonly ops: number[];
  readonly xy: number[];
}

const TOKEN = /([MLCQHVZ])|(-?\d*\.?\d+)/g;
const POINTS_OF: Readonly<Record<string, number>> = { M: 1, L: 1, C: 3, Q: 2 };
const OP_OF: Readonly<Record<string, number>> = { M: MOVE, L: LINE, C: CUBIC, Q: QUADRATIC };
const parsed = new Map<string, PathData>();

/** Reads a path written with the absolute commands M L H V C Q Z; the same text is read only once. */
export function parsePath(text: string): PathData {
  let path = parsed.get(text);
  if (path === undefined) parsed.set(text, (path = readPath(text)));
  return path;
}

function readPath(text: string): PathData {
  const path: PathData = { ops: [], xy: [] };
  let command = '';
  let numbers: number[] = [];
  for (const [, letter, number] of text.matchAll(TOKEN)) {
    if (letter !== undefined) {
      command = letter;
      numbers = [];
      if (command === 'Z') path.ops.push(CLOSE);
      continue;
    }
    numbers.push(Number(number));
    if (command === 'H' || command === 'V') {
      const [x, y] = path.xy.slice(-2);
      addPoints(path, LINE, command === 'H' ? [numbers[0]!, y!] : [x!, numbers[0]!]);
      numbers = [];
    } else if (numbers.length === 2 * POINTS_OF[command]!) {
      addPoints(path, OP_OF[command]!, numbers);
      if (command === 'M') command = 'L';
      numbers = [];
    }
  }
  return path;
}

function addPoints(path: PathData, op: number, numbers: readonly number[]): void {
  path.ops.push(op);
  path.xy.push(...numbers);
}

/** One path after another, as one shape. */
export function joinPaths(paths: readonly PathData[]): PathData {
  return { ops: paths.flatMap((path) => path.ops), xy: paths.flatMap((path) => path.xy) };
}
