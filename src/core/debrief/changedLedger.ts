import { assert } from '../base/assert.ts';
import type { Fact } from '../ledger/fact.ts';
import { Ledger } from '../ledger/Ledger.ts';
import type { LedgerSnapshot } from '../ledger/ledgerSnapshot.ts';
import { handedOver } from './handedOver.ts';
import { lastAtMost } from './lastAtMost.ts';
import { indexOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';
import type { Change } from './whatIfTypes.ts';

/** States that are kept to start from, evenly over the log, however long it is. */
const RESTARTS = 16;

interface Restarts {
  /** Facts between two of them. */
  readonly every: number;
  readonly states: readonly LedgerSnapshot[];
  /** Step of each fact. */
  readonly steps: Uint32Array;
}

const known = new WeakMap<RunLog, Restarts>();

/**
 * The ledger of a log with one thing otherwise: it is taken up from the last kept state before the change and goes through the rest.
 * It keeps no causes.
 */
export function ledgerAfter(log: RunLog, change: Exclude<Change, { kind: 'nothing' }>): Ledger {
  switch (change.kind) {
    case 'undoTouch':
      return without(log, placesOfTouch(log, change.touch));
    case 'undoBreak': {
      const { ledger } = indexOf(log);
      assert(ledger.breaks[change.number - 1] !== undefined, `break ${change.number} in the log`);
      return without(log, placesOfRoots(log, ledger.rootFacts(change.number)));
    }
    case 'remedy':
      return withRemedy(log, change);
  }
}

/** The log without the facts at some places, which rise. */
function without(log: RunLog, places: readonly number[]): Ledger {
  const { facts } = log;
  const first = places[0] ?? facts.length;
  const ledger = upTo(log, first);
  let next = 0;
  for (let place = first; place < facts.length; place++) {
    if (place === places[next]) next++;
    else ledger.apply(facts[place]!);
  }
  return ledger;
}

/** The log with a remedy at the end of a step; from the next one on, fresh surfaces take over what the replaced ones do. */
function withRemedy(log: RunLog, change: Extract<Change, { kind: 'remedy' }>): Ledger {
  const split = lastAtMost(restartsOf(log).steps, change.step) + 1;
  const ledger = upTo(log, split);
  const { facts, renamed } = handedOver(log, ledger.snapshot(), change);
  for (const fact of facts) ledger.apply(fact);
  for (let place = split; place < log.facts.length; place++) ledger.apply(renamed(log.facts[place]!));
  return ledger;
}

/** The ledger after that many facts of the log itself. */
function upTo(log: RunLog, count: number): Ledger {
  const { every, states } = restartsOf(log);
  const ledger = new Ledger(indexOf(log).rules, 'noCauses');
  const state = states[Math.floor(count / every) - 1];
  if (state) ledger.restore(state);
  for (let place = state?.factCount ?? 0; place < count; place++) ledger.apply(log.facts[place]!);
  return ledger;
}

/** Where the touch begins and ends in the log. */
function placesOfTouch(log: RunLog, touch: number): number[] {
  const mark = indexOf(log).touchOf.get(touch);
  const steps = mark ? [...new Set([mark.fromStep, mark.toStep])] : [];
  return steps.flatMap((step) => placesAt(log, step).filter((place) => isOfTouch(log.facts[place]!, touch)));
}

const isOfTouch = (fact: Fact, touch: number): boolean => 'touch' in fact && fact.touch === touch;

function placesAt(log: RunLog, step: number): number[] {
  const { steps } = restartsOf(log);
  const [before, last] = [lastAtMost(steps, step - 1), lastAtMost(steps, step)];
  return Array.from({ length: last - before }, (_, k) => before + 1 + k);
}

/** Places of the roots of a break, with the ends of those that are touches. */
function placesOfRoots(log: RunLog, roots: readonly number[]): number[] {
  const places = new Set(roots);
  for (const place of roots) {
    const fact = log.facts[place]!;
    if (fact.kind === 'touch.began') for (const end of placesOfTouch(log, fact.touch)) if (end > place) places.add(end);
  }
  return [...places].sort((p, q) => p - q);
}

function restartsOf(log: RunLog): Restarts {
  let restarts = known.get(log);
  if (!restarts) known.set(log, (restarts = makeRestarts(log)));
  return restarts;
}

function makeRestarts(log: RunLog): Restarts {
  const { facts } = log;
  const every = Math.max(1, Math.ceil(facts.length / RESTARTS));
  const ledger = new Ledger(indexOf(log).rules, 'noCauses');
  const states: LedgerSnapshot[] = [];
  facts.forEach((fact, place) => {
    ledger.apply(fact);
    if ((place + 1) % every === 0) states.push(ledger.snapshot());
  });
  return { every, states, steps: Uint32Array.from(facts, ({ step }) => step) };
}
