import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { codeOf } from './codeOf.ts';

const ROOT = path.resolve(import.meta.dirname, '../..');

/** A file of the project: its path from the top with slashes, its text, and its code without comments and contents of strings. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
  readonly code: string;
}

/** All files below some folders (or single files) whose names end in one of these, in order of their paths. */
export function sourceFiles(places: readonly string[], endings: readonly string[]): SourceFile[] {
  const found = places.flatMap((place) => filesIn(path.join(ROOT, place))).filter((file) => endings.some((ending) => file.endsWith(ending)));
  return found.sort().map((file) => {
    const text = readFileSync(file, 'utf8');
    return { path: path.relative(ROOT, file).split(path.sep).join('/'), text, code: codeOf(text) };
  });
}

function filesIn(place: string): string[] {
  if (!statSync(place, { throwIfNoEntry: false })) return [];
  if (statSync(place).isFile()) return [place];
  return readdirSync(place, { withFileTypes: true }).flatMap((entry) => {
    if (entry.name === 'node_modules') return [];
    return filesIn(path.join(place, entry.name));
  });
}
