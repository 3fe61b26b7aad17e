import { assert } from '../base/assert.ts';
import type { Side } from '../base/side.ts';
import type { Fact } from '../ledger/fact.ts';
import type { Ledger } from '../ledger/Ledger.ts';
import type { Rule } from '../ledger/rules/rule.ts';
import { rulesInForce } from '../ledger/rules/ruleBook.ts';
import type { Surface } from '../ledger/surface.ts';
import { MarkHistory } from './MarkHistory.ts';
import type { RunLog } from './runLog.ts';
import { sideOf } from './surfaceWords.ts';
import type { TouchMark } from './timelineTypes.ts';

/** What is looked up in a log again and again. */
export interface LogIndex {
  readonly rules: readonly Rule[];
  readonly ledger: Ledger;
  readonly history: MarkHistory;
  readonly surfaces: ReadonlyMap<string, Surface>;
  /** Step at which a surface was taken away; absent while it is there. */
  readonly retired: ReadonlyMap<string, number>;
  /** In order of beginning, and by number. */
  readonly touches: readonly TouchMark[];
  readonly touchOf: ReadonlyMap<number, TouchMark>;
  /** Step at which a touch first spoiled something, which may be long after it began; absent when it never did. */
  readonly spoiledAt: ReadonlyMap<number, number>;
  /** Largest number of a touch. */
  readonly lastTouch: number;
  /** Comings and goings, in order. */
  readonly zoneFacts: readonly ZoneFact[];
}

type ZoneFact = Extract<Fact, { kind: 'zone.entered' | 'zone.left' }>;

const known = new WeakMap<RunLog, LogIndex>();

/** The index of a log, made once. */
export function indexOf(log: RunLog): LogIndex {
  let index = known.get(log);
  if (!index) known.set(log, (index = makeIndex(log)));
  return index;
}

/** The surface of that id; asking for one that the log does not name is our own bug. */
export function surfaceOf(log: RunLog, id: string): Surface {
  const surface = indexOf(log).surfaces.get(id);
  assert(surface !== undefined, `surface "${id}" in the log`);
  return surface;
}

function makeIndex(log: RunLog): LogIndex {
  const rules = rulesInForce(log.scenario);
  const history = new MarkHistory(rules);
  history.take(log.facts);
  const { ledger } = history;
  const surfaces = new Map(ledger.surfaces.map((surface) => [surface.id, surface]));
  const retired = new Map(log.facts.flatMap((fact) => (fact.kind === 'surface.retired' ? [[fact.surface, fact.step] as const] : [])));
  const spoiledAt = new Map<number, number>();
  for (const { touch, step } of ledger.causes) if (touch !== null && !spoiledAt.has(touch)) spoiledAt.set(touch, step);
  const touches = touchMarks(log, surfaces, retired, spoiledAt);
  const lastTouch = touches.reduce((largest, { touch }) => Math.max(largest, touch), 0);
  const zoneFacts = log.facts.filter((fact): fact is ZoneFact => fact.kind === 'zone.entered' || fact.kind === 'zone.left');
  return { rules, ledger, history, surfaces, retired, touches, touchOf: new Map(touches.map((touch) => [touch.touch, touch])), spoiledAt, lastTouch, zoneFacts };
}

type Began = Extract<Fact, { kind: 'touch.began' }>;

function touchMarks(log: RunLog, surfaces: ReadonlyMap<string, Surface>, retired: ReadonlyMap<string, number>, spoiledAt: ReadonlyMap<number, number>): TouchMark[] {
  const ends = new Map<number, number>();
  const began: Began[] = [];
  for (const fact of log.facts) {
    if (fact.kind === 'touch.began') began.push(fact);
    if (fact.kind === 'touch.ended') ends.set(fact.touch, fact.step);
  }
  const side = (id: string): Side | null => sideOf(surfaces.get(id)!);
  return began.map(({ touch, step, a, b, x, y }) => {
    const toStep = ends.get(touch) ?? Math.min(retired.get(a) ?? Infinity, retired.get(b) ?? Infinity, Math.max(step, log.steps - 1));
    return { touch, fromStep: step, toStep, a, b, x, y, side: side(a) ?? side(b), spoils: spoiledAt.has(touch) };
  });
}
