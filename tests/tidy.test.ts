import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BANS } from './tidy/bannedCalls.ts';
import { codeOf } from './tidy/codeOf.ts';
import { functionLengths } from './tidy/functionLengths.ts';
import { importsOf, packageOf } from './tidy/imports.ts';
import { IMPORT_TABLE } from './tidy/importTable.ts';
import { FILE_LINES, FUNCTION_LINES_MAX, LONG_FILES, LONG_FUNCTIONS } from './tidy/ratchet.ts';
import { sourceFiles, type SourceFile } from './tidy/sourceFiles.ts';

const CODE = ['.ts', '.tsx', '.mjs', '.js'];
const source = sourceFiles(['src'], ['.ts', '.tsx']);
const core = source.filter(({ path }) => path.startsWith('src/core/'));
const tools = sourceFiles(['scripts', 'vite.config.ts', 'vitest.config.ts', 'playwright.config.ts'], CODE);
const tests = sourceFiles(['tests'], CODE);
const lineCount = ({ text }: SourceFile): number => text.trimEnd().split('\n').length;

/** Folder of the import table that a path belongs to. */
const folderOf = (path: string): string | undefined => Object.keys(IMPORT_TABLE).filter((folder) => path === folder || path.startsWith(`${folder}/`)).sort((a, b) => b.length - a.length)[0];

describe('Imports', () => {
  it('every source file belongs to a folder of the import table', () => {
    expect(source.map(({ path }) => path).filter((path) => folderOf(path) === undefined)).toEqual([]);
  });

  it('go only where the import table allows', () => {
    const faults = source.flatMap(importsOf).flatMap(({ from, target, outside, typeOnly }) => {
      const folder = folderOf(from);
      const rule = folder === undefined ? undefined : IMPORT_TABLE[folder];
      if (!rule || /\.(?:css|svg|json|woff2|webmanifest)(?:\?\w+)?$/.test(target)) return [];
      if (outside) return rule.packages?.includes(packageOf(target)) ? [] : [`${from} imports the package ${target}`];
      const to = folderOf(target) ?? target;
      if (to === folder || rule.folders.includes(to) || (typeOnly && rule.typesOf?.includes(to))) return [];
      return [`${from} imports ${typeOnly ? 'types of ' : ''}${target}`];
    });
    expect(faults).toEqual([]);
  });
});

describe('The core', () => {
  it('calls nothing that differs between engines, times and machines', () => {
    const faults = core.flatMap(({ path, code }) =>
      code.split('\n').flatMap((line, k) => BANS.filter(({ found }) => found.test(line)).map(({ found, use }) => `${path}:${k + 1} has ${found.exec(line)![0]}; use ${use}`)),
    );
    expect(faults).toEqual([]);
  });

  it.each([
    ['const a = Math.sin(x);', true],
    ['const a = sin(x); // not Math.sin', false],
    ["const a = 'Math.random() and Date';", false],
    ['const a = x ** 2;', true],
    ['/** Date of the run. */', false],
    ['const a = `${Math.random()}`;', false],
    ['const now = Date.now();', true],
  ])('scanner: %s', (line, banned) => {
    expect(BANS.some(({ found }) => found.test(codeOf(line)))).toBe(banned);
  });
});

describe('Sizes', () => {
  it(`half of the files have at most ${FILE_LINES.median} lines`, () => {
    const lines = source.map(lineCount).sort((a, b) => a - b);
    expect(lines[Math.floor(lines.length / 2)]).toBeLessThanOrEqual(FILE_LINES.median);
  });

  it(`no file has more than ${FILE_LINES.max} lines, but for a list that only shrinks`, () => {
    const long = [...source, ...tools, ...tests].map((file) => [file.path, lineCount(file)] as const).filter(([, lines]) => lines > FILE_LINES.max);
    expect(Object.fromEntries(long)).toEqual(LONG_FILES);
  });

  it(`no function has more than ${FUNCTION_LINES_MAX} lines, but for a list that only shrinks`, () => {
    const longest = [...source, ...tools].flatMap(functionLengths).sort((a, b) => a.lines - b.lines);
    const long = longest.filter(({ lines }) => lines > FUNCTION_LINES_MAX).map(({ path, lines }) => [path, lines] as const);
    expect(Object.fromEntries(long)).toEqual(LONG_FUNCTIONS);
  });

  it('functions are measured over their bodies', () => {
    const code = codeOf('function a(): { b: number } {\n  if (x) {\n  }\n}\nconst c = (d: string): void => {\n\n};\nclass E {\n  f(g = "}"): void {\n  }\n}');
    expect(functionLengths({ path: 'a.ts', text: code, code }).map(({ line, lines }) => [line, lines])).toEqual([[1, 4], [5, 3], [9, 2]]);
  });
});

describe('Nothing lies about', () => {
  it('every source file is reached from an entry or a test', () => {
    const all = new Map([...source, ...tools, ...tests].map((file) => [file.path, file]));
    const scripts = Object.values((JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> }).scripts).join(' ');
    const isEntry = (path: string): boolean => /\.(?:test|spec)\.tsx?$/.test(path) || path.endsWith('.config.ts') || path === 'src/main.tsx' || path.endsWith('.mjs') || scripts.includes(path);
    const reached = new Set<string>();
    const visit = (path: string): void => {
      const file = all.get(path);
      if (!file || reached.has(path)) return;
      reached.add(path);
      for (const { target, outside } of importsOf(file)) if (!outside) visit(target);
    };
    for (const path of all.keys()) if (isEntry(path)) visit(path);
    expect([...all.keys()].filter((path) => !reached.has(path) && !path.startsWith('src/app/canvas/dev/'))).toEqual([]);
  });

  it('no reminders are left in the code', () => {
    const reminder = /\b(?:TOD[O]|FIXM[E]|XX[X]|HAC[K])\b/;
    expect([...source, ...tools, ...tests].filter(({ text }) => reminder.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('every file that others use says what it is for', () => {
    const declares = /^export (?:default |abstract |async )*(?:const|function|class|interface|type \w+ )/m;
    expect(source.filter(({ text, code }) => declares.test(code) && !text.includes('/**')).map(({ path }) => path)).toEqual([]);
  });
});
