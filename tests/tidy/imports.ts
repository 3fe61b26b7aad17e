import path from 'node:path';
import type { SourceFile } from './sourceFiles.ts';

/** One import of a file. `target` is a path from the top of the project, or the name of an outside package. */
export interface Import {
  readonly from: string;
  readonly target: string;
  readonly outside: boolean;
  /** Types alone: nothing of it is there at run time. */
  readonly typeOnly: boolean;
}

const STATIC = /^\s*(?:import|export)\s+(type\s)?(?:[^'"`;]*?\sfrom\s*)?['"]([^'"]+)['"]/gm;
const DYNAMIC = /\bimport\(\s*['"]([^'"]+)['"]\s*\)/g;
const URL_OF_FILE = /new URL\(\s*['"](\.[^'"]+)['"]\s*,\s*import\.meta\.url/g;

/** All imports of a file, static and dynamic, and the files that it names by `new URL`. */
export function importsOf(file: SourceFile): Import[] {
  const found: Import[] = [];
  const add = (target: string, typeOnly: boolean): void => {
    const outside = !target.startsWith('.');
    const resolved = outside ? target : path.posix.join(path.posix.dirname(file.path), target);
    found.push({ from: file.path, target: resolved, outside, typeOnly });
  };
  for (const [, type, target] of file.text.matchAll(STATIC)) add(target!, type !== undefined);
  for (const [, target] of file.text.matchAll(DYNAMIC)) add(target!, false);
  for (const [, target] of file.text.matchAll(URL_OF_FILE)) add(target!, false);
  return found;
}

/** Name of the package of an outside import: "preact/hooks" is of preact, "node:fs" of node. */
export function packageOf(target: string): string {
  if (target.startsWith('node:')) return 'node';
  return target.split('/').slice(0, target.startsWith('@') ? 2 : 1).join('/');
}
