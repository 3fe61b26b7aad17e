import { scenarioFields, type Field } from '../../../src/core/scenario/fields.ts';

/** First columns of a row of the authors' table: what the schema itself says about a field. */
export interface FieldRow {
  readonly path: string;
  readonly unit: string;
  readonly fallback: string;
  readonly allowed: string;
}

/** Units by the ending of a field's name, the longest first. */
const UNITS: readonly (readonly [ending: string, unit: string])[] = [
  ['KgPerM2', 'kg/m²'],
  ['KgPerM', 'kg/m'],
  ['NPerM', 'N/m'],
  ['SpeedMps', 'm/s'],
  ['Kg', 'kg'],
  ['Ml', 'mL'],
  ['Deg', '°'],
  ['M', 'm'],
  ['N', 'N'],
  ['S', 's'],
  ['Days', 'd'],
  ['minutes', 'min'],
];

const unitOf = ({ path, kind }: Field): string => (kind === 'number' || kind === 'integer' ? (UNITS.find(([ending]) => path.endsWith(ending))?.[1] ?? '') : '');

function fallbackOf({ path, fallback }: Field): string {
  if (fallback === undefined) return path.includes('[]') && path.endsWith('[]') ? '' : 'must be given';
  if (!Array.isArray(fallback)) return String(fallback);
  return fallback.length === 0 ? 'none' : fallback.map((item: string | { id: string }) => (typeof item === 'string' ? item : item.id)).join(', ');
}

function allowedOf(field: Field): string {
  switch (field.kind) {
    case 'choice':
      return field.options.map((option) => `\`${option}\``).join(' or ');
    case 'boolean':
      return '`true` or `false`';
    case 'list':
      return field.high === null ? 'a list' : `${field.high} ${field.high === 1 ? 'entry' : 'entries'} at most`;
    case 'text':
      return field.low === null ? `${field.high === null ? 'text' : `${field.high} characters at most`}` : `${field.low} to ${field.high} characters`;
    default:
      return `${field.low} to ${field.high}`;
  }
}

/** A row for every field in which something can be written, left and right sides in one. */
export function fieldRows(): readonly FieldRow[] {
  const rows = [...scenarioFields().values()]
    .filter((field) => field.kind !== 'object')
    .map((field) => ({ path: field.path, unit: unitOf(field), fallback: fallbackOf(field), allowed: allowedOf(field) }));
  const sides = (path: string): string => path.replace(/\.(left|right)\./, '.*.');
  return rows.flatMap((row) => {
    const both = rows.filter((other) => sides(other.path) === sides(row.path));
    const same = both.length === 2 && both.every((other) => other.unit === row.unit && other.fallback === row.fallback && other.allowed === row.allowed);
    if (!same) return [row];
    return both[0] === row ? [{ ...row, path: sides(row.path) }] : [];
  });
}

/** The row as it stands in the page, as far as the schema decides it. */
export const rowText = ({ path, unit, fallback, allowed }: FieldRow): string => `| \`${path}\` | ${unit} | ${fallback} | ${allowed} |`;
