import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StateHash } from '../../../src/core/base/hash.ts';
import type { Fact } from '../../../src/core/ledger/fact.ts';
import { Ledger } from '../../../src/core/ledger/Ledger.ts';
import { replayLedger } from '../../../src/core/ledger/replayLedger.ts';
import { ALLOWED_PAIRS } from '../../../src/core/ledger/rules/allowedPairs.ts';
import { RULE_BOOK } from '../../../src/core/ledger/rules/ruleBook.ts';
import { insertRemedy, removeFacts, removeTouch } from './plainWhatIf.ts';
import type { Episode } from './generatedLog.ts';
import { ADDED, KEPT_IDS, NEVER_IDS, episodes, logs, touchLog } from './generatedLog.ts';
import { spoiled, surface } from './log.ts';

const RUNS = { numRuns: 400, seed: 20 };
const replay = (facts: readonly Fact[]): ReturnType<typeof replayLedger> => replayLedger(facts, RULE_BOOK);

/**
 * Which surfaces end up spoiled, by brute force on the episodes alone: earliest step at which each could be, relaxed until nothing
 * changes. A surface is spoiled when it begins to meet something that is never sterile, or is in touch with one spoiled by then.
 */
function reachedInTime(list: readonly Episode[]): string[] {
  const since = new Map<string, number>();
  const sooner = (id: string, step: number): boolean => {
    if (NEVER_IDS.includes(id) || (since.get(id) ?? Infinity) <= step) return false;
    since.set(id, step);
    return true;
  };
  for (let changed = true; changed; ) {
    changed = false;
    for (const { a, b, begin, end } of list.filter((one) => carries(one)))
      for (const [from, to] of [[a, b], [b, a]] as const) {
        const from0 = NEVER_IDS.includes(from) ? begin : (since.get(from) ?? Infinity);
        if (from0 <= end && sooner(to, Math.max(begin, from0))) changed = true;
      }
  }
  return [...since.keys()].sort();
}

/** A drape, the table and the site lie on one another without harm. */
const carries = ({ a, b }: Episode): boolean => {
  const still = ['drape#1:0', 'table#1:top'];
  return !(still.includes(a) && b === 'site#1:all') && !(still.includes(b) && a === 'site#1:all');
};

describe('for any touch log', () => {
  it('the spoiled surfaces are those that the unsterile can reach in time', () => {
    fc.assert(
      fc.property(episodes, (list) => {
        expect(spoiled(replay(touchLog(list)))).toEqual(reachedInTime(list));
      }),
      RUNS,
    );
  });

  it('the order of simultaneous touches changes nothing in what is spoiled', () => {
    fc.assert(
      fc.property(episodes, fc.array(fc.nat(999), { minLength: 40, maxLength: 40 }), (list, ranks) => {
        expect(spoiled(replay(touchLog(list, (touch) => ranks[touch - 1]!)))).toEqual(spoiled(replay(touchLog(list))));
      }),
      RUNS,
    );
  });

  it('without the root touches of a break, exactly that is spared which no other root reaches', () => {
    let spared = 0;
    let kept = 0;
    fc.assert(
      fc.property(episodes, fc.nat(), (list, pick) => {
        const facts = touchLog(list);
        const ledger = replay(facts);
        if (ledger.breaks.length === 0) return;
        const known = ledger.breaks[pick % ledger.breaks.length]!;
        const roots = ledger.rootFacts(known.number);
        const touches = roots.map((place) => (facts[place] as Extract<Fact, { kind: 'touch.began' }>).touch);
        const without = replay(removeFacts(facts, roots));
        expect(spoiled(without)).toEqual(reachedInTime(list.filter((_, k) => !touches.includes(k + 1))));
        expect(spoiled(ledger)).toEqual(expect.arrayContaining(spoiled(without)));
        const left = known.spread.filter(({ surface: id }) => without.isSpoiled(id)).length;
        kept += left;
        spared += known.spread.length - left;
      }),
      RUNS,
    );
    expect(spared).toBeGreaterThan(50);
    expect(kept, 'some have another root').toBeGreaterThan(10);
  });

  it('without one touch, what is spoiled is what the others can reach in time', () => {
    fc.assert(
      fc.property(episodes, fc.nat(39), (list, k) => {
        expect(spoiled(replay(removeTouch(touchLog(list), k + 1)))).toEqual(reachedInTime(list.filter((_, place) => place !== k)));
      }),
      RUNS,
    );
  });

  it('each spread names a surface that was spoiled one depth higher, no later, and touches it', () => {
    fc.assert(
      fc.property(episodes, (list) => {
        for (const { spread } of replay(touchLog(list)).breaks)
          for (const { surface: id, depth, step, touch, from } of spread.filter((one) => one.depth > 0)) {
            const source = spread.find((one) => one.surface === from)!;
            expect(source.depth).toBe(depth - 1);
            expect(source.step).toBeLessThanOrEqual(step);
            const episode = list[touch! - 1]!;
            expect([episode.a, episode.b].sort()).toEqual([id, from].sort());
            expect(episode.begin <= step && step <= episode.end).toBe(true);
          }
      }),
      RUNS,
    );
  });
});

describe('for any log', () => {
  it('taken in bit by bit, with storing and taking up between, it comes to the same as from the beginning', () => {
    fc.assert(
      fc.property(logs, fc.nat(), (facts, cut) => {
        let ledger = new Ledger();
        facts.forEach((fact, place) => {
          ledger.apply(fact);
          if (place % 7 !== cut % 7) return;
          const taken = new Ledger();
          taken.restore(JSON.parse(JSON.stringify(ledger.snapshot())));
          ledger = taken;
        });
        const fresh = new Ledger();
        for (const fact of facts) fresh.apply(fact);
        expect(ledger.snapshot()).toEqual(fresh.snapshot());
        expect(replay(facts).breaks).toEqual(fresh.breaks);
        const [p, q] = [new StateHash(), new StateHash()];
        ledger.hashInto(p);
        fresh.hashInto(q);
        expect(p.digest()).toBe(q.digest());
      }),
      RUNS,
    );
  });

  it('every step of it only adds: what was spoiled stays spoiled by the same break, and breaks keep number, rule and root', () => {
    fc.assert(
      fc.property(logs, (facts) => {
        const ledger = new Ledger();
        let before: { by: Map<string, number | null>; roots: string[] } = { by: new Map(), roots: [] };
        for (const fact of facts) {
          ledger.apply(fact);
          const roots = ledger.breaks.map(({ number, rule, step, surface: id, against }) => `${number} ${rule} ${step} ${id} ${against}`);
          expect(roots.slice(0, before.roots.length)).toEqual(before.roots);
          const by = new Map(spoiled(ledger).map((id) => [id, ledger.spoiledBy(id)]));
          for (const [id, number] of before.by) expect(by.get(id)).toBe(number);
          before = { by, roots };
        }
      }),
      { ...RUNS, numRuns: 100 },
    );
  });

  it('each spoiled surface stands in exactly one break, once', () => {
    fc.assert(
      fc.property(logs, (facts) => {
        const ledger = replay(facts);
        const listed = ledger.breaks.flatMap(({ number, spread }) => spread.map(({ surface: id }) => `${id} ${number}`));
        expect(listed.sort()).toEqual(spoiled(ledger).map((id) => `${id} ${ledger.spoiledBy(id)}`).sort());
      }),
      RUNS,
    );
  });

  it('a remedy inserted at a step changes nothing up to it', () => {
    let changed = 0;
    fc.assert(
      fc.property(logs, fc.integer({ min: 1, max: 400 }), fc.constantFrom('gloveL#1', 'gel#1', 'cord#1', 'probe#1', 'drape#1'), (facts, step, thing) => {
        const [was, is] = [replay(facts), replay(insertRemedy(facts, { step, remedy: 'changeGlove', things: [thing] }))];
        const upTo = (ledger: typeof was): unknown =>
          ledger.breaks.filter((known) => known.step <= step).map(({ number, rule, step: begun, spread }) => ({ number, rule, begun, spread: spread.filter((one) => one.step <= step) }));
        expect(upTo(is)).toEqual(upTo(was));
        if (JSON.stringify(is.breaks) !== JSON.stringify(was.breaks)) changed++;
      }),
      RUNS,
    );
    expect(changed).toBeGreaterThan(30);
  });
});

describe('it never cries wolf', () => {
  const BOTH = ALLOWED_PAIRS.flatMap(({ a, b }) => a.flatMap((p) => b.map((q) => [p, q] as const)));

  it('over an allowed pair, even when one of the two is spoiled', () => {
    for (const [p, q] of BOTH) {
      const facts: Fact[] = [
        { kind: 'surface.added', step: 0, surface: surface('one:all', p) },
        { kind: 'surface.added', step: 0, surface: surface('two:all', q) },
        { kind: 'surface.added', step: 0, surface: surface('cord:all', 'bareCord') },
        { kind: 'touch.began', step: 1, touch: 1, a: 'one:all', b: 'two:all', x: 0, y: 0 },
      ];
      expect(replay(facts).breaks, `${p} and ${q}`).toEqual([]);
      const spoiling: Fact = { kind: 'touch.began', step: 2, touch: 2, a: 'one:all', b: 'cord:all', x: 0, y: 0 };
      expect(spoiled(replay([...facts, spoiling])), `${p} and ${q}`).not.toContain('two:all');
    }
  });

  it('over things that are all sterile or prepared, in whatever order and number they meet', () => {
    fc.assert(
      fc.property(episodes, (list) => {
        const ledger = replay(touchLog(list.filter(({ b }) => KEPT_IDS.includes(b))));
        expect(ledger.breaks).toEqual([]);
        expect(ledger.causes).toEqual([]);
      }),
      RUNS,
    );
  });

  it('over unsterile things that meet one another', () => {
    const facts = [...ADDED];
    let touch = 0;
    for (const a of NEVER_IDS) for (const b of NEVER_IDS) if (a < b) facts.push({ kind: 'touch.began', step: 1, touch: ++touch, a, b, x: 0, y: 0 });
    expect(touch).toBe(6);
    expect(replay(facts).breaks).toEqual([]);
    expect(spoiled(replay(facts))).toEqual([]);
  });
});
