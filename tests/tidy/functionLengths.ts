import type { SourceFile } from './sourceFiles.ts';

/** A function body that spans so many lines, from its first line on. */
export interface FunctionLength {
  readonly path: string;
  readonly line: number;
  readonly lines: number;
}

const OPENS_BODY = /(?:\)|\)\s*:\s*[^;{}=\s][^;{}=]*|\)\s*:\s*\{[^{}]*\}|=>)\s*$/;
const CONTROL = /\b(?:if|for|while|switch|catch|with)\s*\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)\s*$/;
const LOOK_BACK = 400;

/** Every function of a file with a body in braces. */
export function functionLengths(file: SourceFile): FunctionLength[] {
  const { code } = file;
  const found: FunctionLength[] = [];
  const open: { readonly line: number; readonly body: boolean }[] = [];
  let line = 1;
  for (let k = 0; k < code.length; k++) {
    if (code[k] === '\n') line++;
    else if (code[k] === '{') {
      const before = code.slice(Math.max(0, k - LOOK_BACK), k);
      open.push({ line, body: OPENS_BODY.test(before) && !CONTROL.test(before) });
    } else if (code[k] === '}') {
      const opened = open.pop();
      if (opened?.body) found.push({ path: file.path, line: opened.line, lines: line - opened.line + 1 });
    }
  }
  return found;
}
