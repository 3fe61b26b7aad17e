/**
 * Code without what it only says: comments and the insides of strings, templates and regular expressions become spaces, so that
 * lines stay where they are. A scanner, not a parser: good enough for the code of this project and tested with it.
 */
export function codeOf(text: string): string {
  let out = '';
  let at = 0;
  while (at < text.length) {
    const end = spanEnd(text, at, out);
    if (end === at) out += text[at++];
    else {
      out += text.slice(at, end).replace(/[^\n]/g, ' ');
      at = end;
    }
  }
  return out;
}

/** End of the comment, string, template or regular expression that begins here, or `at` when none does. */
function spanEnd(text: string, at: number, before: string): number {
  const two = text.slice(at, at + 2);
  if (two === '//') return endOr(text, text.indexOf('\n', at));
  if (two === '/*') return endOr(text, text.indexOf('*/', at + 2), 2);
  const character = text[at];
  if (character === "'" || character === '"') return quoteEnd(text, at, character);
  if (character === '`') return templateEnd(text, at);
  if (character === '/' && /(?:^|[(,=:[!&|?{};+]|=>|\breturn|\n)\s*$/.test(before.slice(-40))) return regexEnd(text, at);
  return at;
}

const endOr = (text: string, found: number, beyond = 0): number => (found < 0 ? text.length : found + beyond);

/** A quote that does not close on its line is an apostrophe of running text. */
function quoteEnd(text: string, at: number, quote: string): number {
  for (let k = at + 1; k < text.length && text[k] !== '\n'; k++) {
    if (text[k] === '\\') k++;
    else if (text[k] === quote) return k + 1;
  }
  return at;
}

function templateEnd(text: string, at: number): number {
  for (let k = at + 1; k < text.length; k++) {
    if (text[k] === '\\') k++;
    else if (text[k] === '`') return k + 1;
    else if (text[k] === '$' && text[k + 1] === '{') k = holeEnd(text, k + 2);
  }
  return text.length;
}

/** Index of the brace that closes a hole of a template. */
function holeEnd(text: string, at: number): number {
  for (let [k, open] = [at, 1]; k < text.length; k++) {
    if (text[k] === '`') k = templateEnd(text, k) - 1;
    else if (text[k] === "'" || text[k] === '"') k = Math.max(k, quoteEnd(text, k, text[k]!) - 1);
    else if (text[k] === '{') open++;
    else if (text[k] === '}' && --open === 0) return k;
  }
  return text.length;
}

function regexEnd(text: string, at: number): number {
  let inClass = false;
  for (let k = at + 1; k < text.length && text[k] !== '\n'; k++) {
    if (text[k] === '\\') k++;
    else if (text[k] === '[') inClass = true;
    else if (text[k] === ']') inClass = false;
    else if (text[k] === '/' && !inClass) return k + 1;
  }
  return at;
}
