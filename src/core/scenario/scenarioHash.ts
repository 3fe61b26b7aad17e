import { StateHash } from '../base/hash.ts';
import type { Scenario } from './schema.ts';

/** JSON of a plain value with the names of every object in order, so that equal values give equal texts; names without a value are left out. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value)
    .filter(([, part]) => part !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([key, part]) => `${JSON.stringify(key)}:${canonicalJson(part)}`).join(',')}}`;
}

/** 16 hex digits that name the content of a scenario after reading; the order in the file and left-out defaults do not matter. */
export const scenarioHash = (scenario: Scenario): string => new StateHash().addText(canonicalJson(scenario)).digest();
