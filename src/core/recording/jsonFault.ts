import { RUN_FORMAT } from './runFileSchema.ts';
import type { RunFileError } from './runFileError.ts';

/** Why a text that is no JSON cannot be read: nothing in it, ours but cut off, ours but garbled, or something else altogether. */
export function jsonFault(text: string): RunFileError {
  if (text.trim() === '') return { kind: 'empty' };
  const ours = text.slice(0, 200).replace(/\s/g, '').includes(`"format":"${RUN_FORMAT}"`);
  if (!ours) return { kind: 'notJson' };
  return endsInside(text) ? { kind: 'truncated', length: text.length } : { kind: 'garbled' };
}

/** Whether a text of JSON stops within a string, an object or an array. */
function endsInside(text: string): boolean {
  let open = 0;
  let inString = false;
  for (let k = 0; k < text.length; k++) {
    const character = text[k]!;
    if (inString) {
      if (character === '\\') k++;
      else if (character === '"') inString = false;
    } else if (character === '"') inString = true;
    else if (character === '{' || character === '[') open++;
    else if (character === '}' || character === ']') open--;
  }
  return inString || open > 0;
}
