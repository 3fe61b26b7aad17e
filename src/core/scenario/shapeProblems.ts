import type { z } from 'zod';
import { assert } from '../base/assert.ts';
import { scenarioFields, type Field } from './fields.ts';
import { nearest } from './nearest.ts';
import { ADVICE, pathText, problem, valueText, type Problem } from './problem.ts';

type Issue = z.core.$ZodIssue;

/** Turns what the schema found in `source` into sentences: unknown names first, because a misspelt name also leaves one missing. */
export function shapeProblems(source: unknown, issues: readonly Issue[]): readonly Problem[] {
  const unknown = issues.flatMap((issue) => (issue.code === 'unrecognized_keys' ? issue.keys.map((key) => unknownField(issue.path, key)) : []));
  const wrong = issues.filter((issue) => issue.code !== 'unrecognized_keys').map((issue) => wrongValue(source, issue.path));
  const all = [...unknown, ...wrong];
  return all.filter((one, k) => all.findIndex((other) => other.path === one.path) === k);
}

const fieldAt = (path: readonly PropertyKey[]): Field => {
  const place = path.reduce<string>((text, step) => (typeof step === 'number' ? `${text}[]` : text === '' ? String(step) : `${text}.${String(step)}`), '');
  const field = scenarioFields().get(place);
  assert(field !== undefined, `the schema has no field ${place}`);
  return field;
};

function unknownField(parent: readonly PropertyKey[], key: string): Problem {
  const path = pathText([...parent, key]);
  return { path, message: `${path} is not a known field; ${meantText(key, fieldAt(parent).keys)}. Correct or remove it and open the file again.` };
}

/** What a name that is not known was probably meant to be: misspelt, in the wrong place, or nothing that is known. */
function meantText(key: string, siblings: readonly string[]): string {
  const meant = nearest(key, siblings);
  if (meant !== null) return `the nearest is ${meant}`;
  const elsewhere = [...scenarioFields().keys()].find((path) => path.endsWith(`.${key}`));
  return elsewhere === undefined ? `known here are ${siblings.join(', ')}` : `its place is ${elsewhere}`;
}

function wrongValue(source: unknown, path: readonly PropertyKey[]): Problem {
  const place = pathText(path);
  const value = path.reduce<unknown>((part, step) => (part as Record<PropertyKey, unknown>)[step], source);
  const field = fieldAt(path);
  if (value === undefined) return { path: place, message: `${place} is missing; allowed is ${allowedText(field, value)}. Add it and open the file again.` };
  if (field.kind === 'list' && Array.isArray(value)) return { path: place, message: `${place} has ${value.length} entries; allowed are ${field.high} at most. ${ADVICE}` };
  if (field.kind === 'text' && field.pattern === null && typeof value === 'string') return problem(place, `${valueText(value)} (${value.length === 1 ? '1 character' : `${value.length} characters`})`, allowedText(field, value));
  return problem(place, valueText(value), allowedText(field, value));
}

const PATTERNS: Readonly<Record<string, string>> = {
  '^[a-z][a-z0-9-]*$': 'small letters, digits and hyphens, a letter first',
  '^[a-z][a-zA-Z0-9]*$': 'letters and digits, a small letter first',
};

/** What a field takes, in words. A number that is only too small or too large is answered with the range alone. */
export function allowedText(field: Field, value: unknown): string {
  const range = `${field.low} to ${field.high}`;
  switch (field.kind) {
    case 'number':
      return typeof value === 'number' ? range : `a number from ${range}`;
    case 'integer':
      return `a whole number from ${range}`;
    case 'boolean':
      return 'true or false';
    case 'object':
      return 'an object in braces {}';
    case 'list':
      return 'a list in brackets []';
    case 'choice':
      return choiceText(field.options.map(valueText));
    case 'text':
      return textText(field, range);
  }
}

const choiceText = (words: readonly string[]): string => (words.length === 1 ? words[0]! : `${words.slice(0, -1).join(', ')} or ${words[words.length - 1]}`);

function textText(field: Field, range: string): string {
  if (field.pattern !== null) return `${PATTERNS[field.pattern]}, ${field.high} characters at most`;
  return field.high === null ? 'text in double quotes' : `text of ${range} characters`;
}
