import { assert } from '../base/assert.ts';
import type { StateHash } from '../base/hash.ts';
import type { Break } from './break.ts';
import { noticeAll } from './breakList.ts';
import type { Fact } from './fact.ts';
import type { LedgerSnapshot } from './ledgerSnapshot.ts';
import { hashState, restoreState, snapshotState } from './ledgerSnapshot.ts';
import type { Cause, LedgerState, Notice, SurfaceRecord } from './ledgerState.ts';
import { emptyState, otherOf, recordOf } from './ledgerState.ts';
import { drift, enterZone, leaveZone, spoilSheath, tearGlove, use } from './placing.ts';
import { enterRemedy, retire } from './remedying.ts';
import type { Rule } from './rules/rule.ts';
import { RULE_BOOK } from './rules/ruleBook.ts';
import { RuleIndex } from './rules/ruleIndex.ts';
import type { Surface, SurfaceState } from './surface.ts';
import { beginTouch, endTouch, forgetEnded } from './touching.ts';

/** How a surface is shown: as it should be, unsterile by nature or place, or spoiled by a break of this run. */
export type Mark = 'sterile' | 'unsterile' | 'became' | 'prepared';

/** What can be read from a ledger; all of it is a pure function of the facts taken in. */
export type LedgerView = Pick<Ledger, 'breaks' | 'notices' | 'causes' | 'surfaces' | 'stateOf' | 'isSpoiled' | 'spoiledBy' | 'markOf' | 'marks' | 'touching' | 'carried' | 'rootFacts'>;

/**
 * Keeps what is sterile. It takes the touch log fact by fact and knows at any time the state of every surface, the breaks with
 * their roots, what each spread to and reached, and what was noticed and remedied.
 *
 * Facts come in order of steps. Within one step: surfaces added, zones, touches (begun, then ended), drift, use, notice, surfaces
 * retired and added by a remedy, remedied. Touches of one step have no order among themselves: one that ends still counts until
 * the step is over.
 */
export class Ledger {
  private readonly rules: RuleIndex;
  private state: LedgerState = emptyState();

  /**
   * @param rules those that the scenario judges (`rulesInForce`)
   * @param keeps causes of the whole log, only of the last step, or none: a long log has tens of thousands, which not everyone reads
   */
  constructor(rules: readonly Rule[] = RULE_BOOK, private readonly keeps: 'allCauses' | 'lastStep' | 'noCauses' = 'allCauses') {
    if (keeps === 'noCauses') this.state.causes = null;
    this.rules = new RuleIndex(rules);
  }

  apply(fact: Fact): void {
    const { state, rules } = this;
    if (fact.step < state.step) assert(false, `facts in order of steps: ${fact.kind} at ${fact.step} after ${state.step}`);
    if (fact.step > state.step) {
      forgetEnded(state);
      if (this.keeps === 'lastStep' && state.causes!.length > 0) state.causes = [];
    }
    state.step = fact.step;
    switch (fact.kind) {
      case 'surface.added':
        this.add(fact.surface);
        break;
      case 'surface.retired':
        retire(state, fact.surface);
        break;
      case 'touch.began': {
        const { touch, x, y } = fact;
        beginTouch(state, rules, { touch, a: recordOf(state, fact.a), b: recordOf(state, fact.b), x, y, ended: false });
        break;
      }
      case 'touch.ended':
        endTouch(state, fact.touch);
        break;
      case 'zone.entered':
        enterZone(state, rules, fact);
        break;
      case 'zone.left':
        leaveZone(state, rules, fact.surface, fact.zone);
        break;
      case 'drape.drifted':
        drift(state, rules, fact);
        break;
      case 'used':
        use(state, rules, fact);
        break;
      case 'torn':
      case 'gelled':
        spoilSheath(state, rules, fact);
        break;
      case 'glove.torn':
        tearGlove(state, rules, fact);
        break;
      case 'noticed':
        noticeAll(state);
        break;
      case 'remedied':
        enterRemedy(state, fact.remedy, fact.things);
        break;
    }
    state.factCount++;
  }

  /** Breaks by number; entries are replaced when they change, never altered. */
  get breaks(): readonly Break[] {
    return this.state.breaks;
  }

  get notices(): readonly Notice[] {
    return this.state.notices;
  }

  /** Every edge of the graph of causes, in order, as far as they are kept. */
  get causes(): readonly Cause[] {
    return this.state.causes ?? [];
  }

  /** Every surface that was ever added, the retired ones too. */
  get surfaces(): readonly Surface[] {
    return [...this.state.surfaces.values()].map(({ surface }) => surface);
  }

  stateOf(surface: string): SurfaceState {
    const record = recordOf(this.state, surface);
    return record.taint === 'clean' ? record.surface.initial : 'unsterile';
  }

  /** Made unsterile by a break of this run. */
  isSpoiled(surface: string): boolean {
    return recordOf(this.state, surface).taint === 'break';
  }

  /** Number of the break that spoiled it first, or null. */
  spoiledBy(surface: string): number | null {
    return recordOf(this.state, surface).break || null;
  }

  markOf(surface: string): Mark {
    return this.isSpoiled(surface) ? 'became' : this.stateOf(surface);
  }

  marks(): Map<string, Mark> {
    return new Map([...this.state.surfaces.keys()].map((id) => [id, this.markOf(id)]));
  }

  /** What a surface touches now. */
  touching(surface: string): readonly { readonly touch: number; readonly other: string }[] {
    const record = recordOf(this.state, surface);
    return record.touches
      .map((touch) => this.state.contacts.get(touch)!)
      .filter(({ ended }) => !ended)
      .map((contact) => ({ touch: contact.touch, other: otherOf(contact, record).surface.id }));
  }

  /** Whether a touch made something unsterile, or would have, had it not been so already. */
  carried(touch: number): boolean {
    return this.causes.some((cause) => cause.touch === touch);
  }

  /** Places in the log (from 0) of the facts that are the roots of a break. */
  rootFacts(number: number): readonly number[] {
    const places = new Set<number>();
    for (const { rule, break: known, fact } of this.causes) if (rule !== null && known === number) places.add(fact);
    return [...places];
  }

  /** Plain data to go on from. */
  snapshot(): LedgerSnapshot {
    return snapshotState(this.state);
  }

  restore(snapshot: LedgerSnapshot): void {
    this.state = restoreState(snapshot);
  }

  hashInto(hash: StateHash): void {
    hashState(this.state, hash);
  }

  private add(surface: Surface): void {
    const { surfaces } = this.state;
    assert(!surfaces.has(surface.id), `surface "${surface.id}" is added once`);
    const taint: SurfaceRecord['taint'] = surface.initial === 'unsterile' ? 'nature' : 'clean';
    surfaces.set(surface.id, { surface, taint, because: 'nature', zones: [], away: false, discarded: false, break: 0, depth: 0, retiredStep: null, touches: [] });
  }
}
