/** Where a text stops being JSON, counted from 1, and what could have stood there. */
export interface JsonPlace {
  readonly line: number;
  readonly column: number;
  readonly expected: string;
}

const SPACE = /[ \t\r\n]*/y;
const SCALAR = /"(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"|-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?|true|false|null/y;

type Wanted = 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'next' | 'nothing';

const WORDS: Readonly<Record<Wanted, string>> = {
  value: 'a value',
  valueOrEnd: 'a value or ]',
  key: 'a name in double quotes after the comma',
  keyOrEnd: 'a name in double quotes or }',
  colon: 'a colon',
  next: 'a comma or the closing bracket',
  nothing: 'the end of the file',
};

/**
 * Finds the first place at which `text` is not JSON, or null if it is. Engines word their own messages differently and not all of
 * them name the place, so it is found here. Open brackets are kept in a list: depth cannot exhaust the stack.
 */
export function jsonPlace(text: string): JsonPlace | null {
  const open: ('{' | '[')[] = [];
  let wanted = 'value' as Wanted;
  let at = 0;
  const after = (): Wanted => (open.length === 0 ? 'nothing' : 'next');
  for (;;) {
    SPACE.lastIndex = at;
    SPACE.test(text);
    at = SPACE.lastIndex;
    const letter = text[at];
    if (letter === undefined && wanted === 'nothing') return null;
    const top = open[open.length - 1];
    if ((letter === '{' || letter === '[') && (wanted === 'value' || wanted === 'valueOrEnd')) {
      open.push(letter);
      wanted = letter === '{' ? 'keyOrEnd' : 'valueOrEnd';
    } else if (closes(letter, top, wanted)) {
      open.pop();
      wanted = after();
    } else if (letter === ',' && wanted === 'next') wanted = top === '{' ? 'key' : 'value';
    else if (letter === ':' && wanted === 'colon') wanted = 'value';
    else {
      const end = scalarEnd(text, at, wanted);
      if (end === null) return placeOf(text, at, wanted);
      at = end - 1;
      wanted = wanted === 'key' || wanted === 'keyOrEnd' ? 'colon' : after();
    }
    at++;
  }
}

const closes = (letter: string | undefined, top: '{' | '[' | undefined, wanted: Wanted): boolean =>
  (letter === '}' && top === '{' && (wanted === 'next' || wanted === 'keyOrEnd')) ||
  (letter === ']' && top === '[' && (wanted === 'next' || wanted === 'valueOrEnd'));

/** Place after the text, number or word at `at`, if one is wanted there. */
function scalarEnd(text: string, at: number, wanted: Wanted): number | null {
  if (wanted === 'colon' || wanted === 'next' || wanted === 'nothing') return null;
  if ((wanted === 'key' || wanted === 'keyOrEnd') && text[at] !== '"') return null;
  SCALAR.lastIndex = at;
  return SCALAR.test(text) ? SCALAR.lastIndex : null;
}

function placeOf(text: string, at: number, wanted: Wanted): JsonPlace {
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: before[before.length - 1]!.length + 1, expected: WORDS[wanted] };
}
