import { readFileSync } from 'node:fs';
import { parseScenario } from '../../src/core/scenario/parseScenario.ts';
import type { Scenario } from '../../src/core/scenario/schema.ts';
import type { RunSnapshot } from '../../src/core/run/contract.ts';
import type { RunResult } from '../../src/core/run/result.ts';
import { Run } from '../../src/core/run/run.ts';
import { Operator, type SentCommand } from './operator.ts';

export type ShippedRoom = 'quiet-room' | 'high-rails-short-sheath' | 'restless-patient-head-down' | 'harmless-or-not' | 'sheath-short' | 'sheath-loose-clumsy' | 'sheath-hurried';

export interface OperatorRun {
  readonly op: Operator;
  readonly run: Run;
  readonly result: RunResult;
  readonly commands: readonly SentCommand[];
}

/** A scenario as shipped, with some of its values changed by `change`. */
export function shippedScenario(room: ShippedRoom, change: (source: Record<string, unknown>) => void = () => {}): Scenario {
  const source = JSON.parse(readFileSync(new URL(`../../scenarios/${room}.json`, import.meta.url), 'utf8')) as Record<string, unknown>;
  change(source);
  const read = parseScenario(JSON.stringify(source));
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

const shipped = new Map<ShippedRoom, Scenario>();
const settled = new Map<Scenario, { readonly run: Run; readonly start: RunSnapshot }>();

/**
 * A run at its first step. Building one lets everything in it settle, so it is built once for each scenario and set back for the
 * next script: what is looked at must be looked at before the next call.
 */
export function freshRun(room: ShippedRoom | Scenario = 'quiet-room'): Run {
  if (typeof room === 'string' && !shipped.has(room)) shipped.set(room, shippedScenario(room));
  const scenario = typeof room === 'string' ? shipped.get(room)! : room;
  let known = settled.get(scenario);
  if (!known) {
    const run = new Run(scenario);
    settled.set(scenario, (known = { run, start: structuredClone(run.snapshot()) }));
  }
  known.run.restore(structuredClone(known.start));
  return known.run;
}

/** Plays a script of an operator in a room and says what came of it. */
export function runOperator(script: (op: Operator) => void, room: ShippedRoom | Scenario = 'quiet-room'): OperatorRun {
  const run = freshRun(room);
  const op = new Operator(run);
  script(op);
  return { op, run, result: run.result(), commands: op.commands };
}
