import { z } from 'zod';
import { scenarioSchema } from './schema.ts';

/** What may be written at one place of a scenario file, read off the schema, so that sentences and documents cannot drift from it. */
export interface Field {
  /** Names from the root, list entries as `[]`: `room.rails.xM`, `items[].xM`. */
  readonly path: string;
  readonly kind: 'number' | 'integer' | 'text' | 'choice' | 'boolean' | 'object' | 'list';
  /** Smallest and largest number, number of characters, or number of entries; null where there is no such bound. */
  readonly low: number | null;
  readonly high: number | null;
  /** Allowed values of a choice. */
  readonly options: readonly (string | number)[];
  /** Names of the fields of an object. */
  readonly keys: readonly string[];
  /** Pattern that a text must match, or null. */
  readonly pattern: string | null;
  /** Value that is taken when the field is left out; undefined where it must be written. */
  readonly fallback: unknown;
}

interface Node {
  readonly type: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly default?: unknown;
  readonly const?: string | number;
  readonly enum?: readonly string[];
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly maxItems?: number;
}

const kindOf = (node: Node): Field['kind'] => {
  if (node.const !== undefined || node.enum !== undefined) return 'choice';
  if (node.type === 'string') return 'text';
  if (node.type === 'array') return 'list';
  return node.type as 'number' | 'integer' | 'boolean' | 'object';
};

function collect(node: Node, path: string, into: Map<string, Field>): void {
  into.set(path, {
    path,
    kind: kindOf(node),
    low: node.minimum ?? node.minLength ?? null,
    high: node.maximum ?? node.maxLength ?? node.maxItems ?? null,
    options: node.const !== undefined ? [node.const] : (node.enum ?? []),
    keys: Object.keys(node.properties ?? {}),
    pattern: node.pattern ?? null,
    fallback: node.default,
  });
  for (const [key, child] of Object.entries(node.properties ?? {})) collect(child, path === '' ? key : `${path}.${key}`, into);
  if (node.items !== undefined) collect(node.items, `${path}[]`, into);
}

let known: ReadonlyMap<string, Field> | null = null;

/** Every place of a scenario file by its path, the root as ''. */
export function scenarioFields(): ReadonlyMap<string, Field> {
  if (known === null) {
    const fields = new Map<string, Field>();
    collect(z.toJSONSchema(scenarioSchema, { io: 'input' }) as Node, '', fields);
    known = fields;
  }
  return known;
}
