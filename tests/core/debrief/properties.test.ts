import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakGraph, causesOf, chainTo } from '../../../src/core/debrief/causeGraph.ts';
import { ledgerAfter } from '../../../src/core/debrief/changedLedger.ts';
import { indexOf } from '../../../src/core/debrief/logIndex.ts';
import { MarkHistory } from '../../../src/core/debrief/MarkHistory.ts';
import { whatIf } from '../../../src/core/debrief/whatIf.ts';
import type { Fact } from '../../../src/core/ledger/fact.ts';
import { Ledger } from '../../../src/core/ledger/Ledger.ts';
import type { LedgerSnapshot } from '../../../src/core/ledger/ledgerSnapshot.ts';
import { rulesInForce } from '../../../src/core/ledger/rules/ruleBook.ts';
import type { Change } from '../../../src/core/debrief/whatIfTypes.ts';
import type { RunLog } from '../../../src/core/debrief/runLog.ts';
import { insertRemedy, removeFacts, removeTouch } from '../ledger/plainWhatIf.ts';
import { NEVER_IDS, episodes, logs, touchLog, type Episode } from '../ledger/generatedLog.ts';
import { runLog, SCENARIO } from './runLogs.ts';

const RUNS = { numRuns: 400, seed: 41 };
const RULES = rulesInForce(SCENARIO);

/** The drape, the table and the site lie on one another without harm. */
const carries = ({ a, b }: Episode): boolean => {
  const still = ['drape#1:0', 'table#1:top'];
  return !(still.includes(a) && b === 'site#1:all') && !(still.includes(b) && a === 'site#1:all');
};

/** By brute force on the episodes alone: every surface that something never sterile can reach in time. */
function reachedInTime(list: readonly Episode[]): string[] {
  const since = new Map<string, number>();
  for (let changed = true; changed; ) {
    changed = false;
    for (const { a, b, begin, end } of list.filter(carries))
      for (const [from, to] of [[a, b], [b, a]] as const) {
        const carrier = NEVER_IDS.includes(from) ? begin : (since.get(from) ?? Infinity);
        const step = Math.max(begin, carrier);
        if (carrier > end || NEVER_IDS.includes(to) || (since.get(to) ?? Infinity) <= step) continue;
        since.set(to, step);
        changed = true;
      }
  }
  return [...since.keys()].sort();
}

const ids = (list: readonly { readonly surface: string }[]): string[] => list.map(({ surface }) => surface).sort();

describe('for any touch log', () => {
  it('without a break, exactly what has no other root is spared', () => {
    let spared = 0;
    let kept = 0;
    fc.assert(
      fc.property(episodes, fc.nat(), (list, pick) => {
        const log = runLog(touchLog(list));
        const { breaks } = log.result;
        if (breaks.length === 0) return;
        const { number, spread } = breaks[pick % breaks.length]!;
        const removed = new Set(indexOf(log).ledger.rootFacts(number).map((place) => (log.facts[place] as Extract<Fact, { kind: 'touch.began' }>).touch));
        const left = reachedInTime(list.filter((_, k) => !removed.has(k + 1)));
        const outcome = whatIf(log, { kind: 'undoBreak', number });
        expect(ids(outcome.stillSpoiled)).toEqual(left);
        expect(ids(outcome.spared)).toEqual(reachedInTime(list).filter((id) => !left.includes(id)));
        expect(outcome.newlySpoiled).toEqual([]);
        expect(spread.map(({ surface }) => surface)).toEqual(expect.arrayContaining(ids(outcome.spared)));
        spared += outcome.spared.length;
        kept += spread.length - outcome.spared.length;
      }),
      RUNS,
    );
    expect(spared).toBeGreaterThan(50);
    expect(kept, 'some have another root').toBeGreaterThan(10);
  });

  it('without one touch, exactly what the others cannot reach in time is spared', () => {
    fc.assert(
      fc.property(episodes, fc.nat(39), (list, k) => {
        const touch = (k % list.length) + 1;
        const left = reachedInTime(list.filter((_, place) => place !== touch - 1));
        expect(ids(whatIf(runLog(touchLog(list)), { kind: 'undoTouch', touch }).stillSpoiled)).toEqual(left);
      }),
      RUNS,
    );
  });

  it('each chain begins at a root of its break and follows touches that were there at those steps', () => {
    fc.assert(
      fc.property(episodes, (list) => {
        const log = runLog(touchLog(list));
        for (const id of reachedInTime(list)) {
          const chain = chainTo(log, id);
          const { edges, roots } = breakGraph(log, chain[0]!.break);
          expect(roots.some(({ surface, step }) => surface === chain[0]!.surface && step === chain[0]!.step)).toBe(true);
          expect(chain.map(({ depth }) => depth)).toEqual(chain.map((_, k) => k));
          chain.slice(1).forEach((node, k) => {
            const edge = edges.find(({ to, first }) => first && to === node.surface)!;
            const { a, b, begin, end } = list[edge.touch! - 1]!;
            expect([a, b].sort()).toEqual([chain[k]!.surface, node.surface].sort());
            expect(begin <= node.step && node.step <= end).toBe(true);
          });
        }
      }),
      RUNS,
    );
  });

  it('all causes of a surface hold its chain, lead to roots, and are none of what it spoiled itself', () => {
    fc.assert(
      fc.property(episodes, (list) => {
        const log = runLog(touchLog(list));
        for (const id of reachedInTime(list)) {
          const last = chainTo(log, id).at(-1)!;
          const graph = causesOf(log, id, last.step);
          expect(ids(graph.nodes)).toEqual(expect.arrayContaining(ids(chainTo(log, id))));
          expect(graph.roots.length).toBeGreaterThan(0);
          expect(graph.nodes.every(({ step }) => step <= last.step)).toBe(true);
        }
      }),
      RUNS,
    );
  });
});

describe('for any log', () => {
  it('nothing otherwise is the run itself', () => {
    fc.assert(
      fc.property(logs, (facts) => {
        const log = runLog(facts);
        const outcome = whatIf(log, { kind: 'nothing' });
        expect(outcome.breaks).toEqual(log.result.breaks);
        expect([outcome.spared, outcome.newlySpoiled]).toEqual([[], []]);
      }),
      RUNS,
    );
  });

  it('a remedy changes nothing before it: no break, no mark at any step', () => {
    let changed = 0;
    fc.assert(
      fc.property(logs, fc.integer({ min: 1, max: 400 }), fc.constantFrom('gloveL#1', 'gel#1', 'cord#1', 'probe#1', 'drape#1'), (facts, step, thing) => {
        const log = runLog(facts);
        const outcome = whatIf(log, { kind: 'remedy', remedy: 'changeGlove', things: [thing], step });
        const upTo = (breaks: typeof outcome.breaks): unknown =>
          breaks.filter((known) => known.step <= step).map(({ number, rule, step: begun, spread }) => ({ number, rule, begun, spread: spread.filter((one) => one.step <= step) }));
        expect(upTo(outcome.breaks)).toEqual(upTo(log.result.breaks));
        const then = historyOf(insertRemedy(facts, { remedy: 'changeGlove', things: [thing], step }));
        const was = historyOf(facts);
        // Marks of a step that is over, of what was there.
        for (const at of [0, step >> 1, step - 1]) expect(then.marksAt(at)).toEqual(was.marksAt(at));
        if (JSON.stringify(outcome.breaks) !== JSON.stringify(log.result.breaks)) changed++;
      }),
      RUNS,
    );
    expect(changed).toBeGreaterThan(30);
  });

  it('the marks of every step are those of the ledger when that step was done', () => {
    fc.assert(
      fc.property(logs, fc.array(fc.nat(40), { maxLength: 20 }), (facts, cuts) => {
        const history = new MarkHistory(RULES);
        const ledger = new Ledger(RULES);
        const known: { step: number; marks: ReadonlyMap<string, string> }[] = [];
        for (const part of inWholeSteps(facts, cuts)) {
          history.take(part);
          for (const [k, fact] of part.entries()) {
            ledger.apply(fact);
            if (part[k + 1]?.step === fact.step) continue;
            for (const id of ledger.surfaces.map((one) => one.id)) expect(history.markAt(id, fact.step)).toBe(ledger.markOf(id));
            known.push({ step: fact.step, marks: ledger.marks() });
          }
        }
        known.forEach(({ step, marks }, k) => {
          expect(history.marksAt(step)).toEqual(marks);
          expect(history.marksAt((known[k + 1]?.step ?? step + 9) - 1), 'until the next fact').toEqual(marks);
        });
        expect(history.ledger.breaks).toEqual(ledger.breaks);
      }),
      { ...RUNS, numRuns: 100 },
    );
  });

  it('what-if comes to the same state as replaying the whole changed log', () => {
    let otherwise = 0;
    const compare = (log: RunLog, change: Changed): void => {
      const is = ledgerAfter(log, change).snapshot();
      expect(is).toEqual(replayed(plainly(log, change)));
      if (JSON.stringify(is.breaks) !== JSON.stringify(log.result.breaks)) otherwise++;
    };
    fc.assert(
      fc.property(logs, fc.nat(), fc.integer({ min: 0, max: 400 }), fc.constantFrom('gloveL#1', 'gel#1', 'cord#1', 'probe#1', 'drape#1'), (facts, pick, step, thing) => {
        const log = runLog(facts);
        for (const change of changesOf(log, pick, step, thing)) compare(log, change);
      }),
      RUNS,
    );
    const long = runLog(oneAfterAnother(fc.sample(logs, { ...RUNS, numRuns: 150 })));
    expect(long.facts.length, 'long enough for several states to start from').toBeGreaterThan(2000);
    for (let k = 0; k < 40; k++) for (const change of changesOf(long, k * 97, Math.floor((k * long.steps) / 40), k % 2 === 0 ? 'gel#1' : 'gloveL#1')) compare(long, change);
    expect(otherwise).toBeGreaterThan(200);
  });
});

type Changed = Exclude<Change, { kind: 'nothing' }>;

/** One change of each kind that the log allows. */
function changesOf(log: RunLog, pick: number, step: number, thing: string): Changed[] {
  const touches = log.facts.flatMap((fact) => (fact.kind === 'touch.began' ? [fact.touch] : []));
  const { breaks } = log.result;
  return [
    ...(touches.length === 0 ? [] : [{ kind: 'undoTouch', touch: touches[pick % touches.length]! } as const]),
    ...(breaks.length === 0 ? [] : [{ kind: 'undoBreak', number: 1 + (pick % breaks.length) } as const]),
    { kind: 'remedy', remedy: 'changeGlove', things: [thing], step },
  ];
}

function plainly({ facts, ...log }: RunLog, change: Changed): Fact[] {
  if (change.kind === 'undoTouch') return removeTouch(facts, change.touch);
  return change.kind === 'remedy' ? insertRemedy(facts, change) : removeFacts(facts, indexOf({ facts, ...log }).ledger.rootFacts(change.number));
}

function replayed(facts: readonly Fact[]): LedgerSnapshot {
  const ledger = new Ledger(RULES, 'noCauses');
  for (const fact of facts) ledger.apply(fact);
  return ledger.snapshot();
}

function historyOf(facts: readonly Fact[]): MarkHistory {
  const history = new MarkHistory(RULES);
  history.take(facts);
  return history;
}

/** Cuts a log where a step ends, at about the given distances. */
function inWholeSteps(facts: readonly Fact[], cuts: readonly number[]): Fact[][] {
  const parts: Fact[][] = [[]];
  let left = cuts[0] ?? Infinity;
  facts.forEach((fact, k) => {
    parts[parts.length - 1]!.push(fact);
    if (left-- > 0 || facts[k + 1] === undefined || facts[k + 1]!.step === fact.step) return;
    parts.push([]);
    left = cuts[parts.length - 1] ?? Infinity;
  });
  return parts;
}

/** One log after the other, in the same room. */
function oneAfterAnother(parts: readonly (readonly Fact[])[]): Fact[] {
  let later = 0;
  let touches = 0;
  return parts.flatMap((part, k) => {
    const moved = part.filter(({ kind }) => k === 0 || kind !== 'surface.added').map((fact): Fact => ({ ...fact, step: fact.step + later, ...('touch' in fact ? { touch: fact.touch + touches } : {}) }) as Fact);
    later += 600;
    touches += 100;
    return moved;
  });
}
