import type { Fact } from '../ledger/fact.ts';
import type { Mark } from '../ledger/Ledger.ts';
import { Ledger } from '../ledger/Ledger.ts';
import type { Rule } from '../ledger/rules/rule.ts';
import { lastAtMost } from './lastAtMost.ts';

/** When a surface got which mark, oldest first. */
interface Marks {
  readonly steps: number[];
  readonly marks: Mark[];
}

/** How every surface is shown at every step, from the touch log. It grows with the log, in whole steps. */
export class MarkHistory {
  /** The ledger as it stands after what was taken in. */
  readonly ledger: Ledger;
  private readonly surfaces = new Map<string, Marks>();
  /** Every step at which some mark changed, rising. */
  private readonly changes: number[] = [];
  private known = { from: 0, before: 0, marks: new Map() as ReadonlyMap<string, Mark> };
  private causesSeen = 0;
  private touched = new Set<string>();

  /** @param keeps causes that its ledger keeps for whoever reads it; for the marks those of the last step are enough */
  constructor(rules: readonly Rule[], private readonly keeps: 'allCauses' | 'lastStep' = 'allCauses') {
    this.ledger = new Ledger(rules, keeps);
  }

  /** Takes in all facts of one or more further steps. */
  take(facts: readonly Fact[]): void {
    facts.forEach((fact, k) => {
      this.ledger.apply(fact);
      this.note(fact);
      if (facts[k + 1]?.step !== fact.step) this.closeStep(fact.step);
    });
  }

  /** Mark of a surface once that step is done; undefined before it was there. */
  markAt(surface: string, step: number): Mark | undefined {
    const known = this.surfaces.get(surface);
    return known?.marks[lastAtMost(known.steps, step)];
  }

  /** Marks of every surface that had been there by then; the same map as long as none changes. */
  marksAt(step: number): ReadonlyMap<string, Mark> {
    if (step >= this.known.from && step < this.known.before) return this.known.marks;
    const place = lastAtMost(this.changes, step);
    const marks = new Map<string, Mark>();
    for (const [id, { steps, marks: list }] of this.surfaces) {
      const mark = list[lastAtMost(steps, step)];
      if (mark !== undefined) marks.set(id, mark);
    }
    this.known = { from: this.changes[place] ?? 0, before: this.changes[place + 1] ?? Infinity, marks };
    return marks;
  }

  /** Steps at which the mark of a surface changed, with what it became; the first is when it came into the room. */
  historyOf(surface: string): readonly { readonly step: number; readonly mark: Mark }[] {
    const known = this.surfaces.get(surface);
    return known ? known.steps.map((step, k) => ({ step, mark: known.marks[k]! })) : [];
  }

  /** Remembers what a fact may have changed beside what it spoiled: what it speaks of, and what touches that. */
  private note(fact: Fact): void {
    if (fact.kind === 'surface.added') this.touched.add(fact.surface.id);
    if (fact.kind === 'touch.began') this.touched.add(fact.a).add(fact.b);
    if (fact.kind === 'zone.entered' || fact.kind === 'zone.left') {
      this.touched.add(fact.surface);
      for (const { other } of this.ledger.touching(fact.surface)) this.touched.add(other);
    }
    const { causes } = this.ledger;
    for (; this.causesSeen < causes.length; this.causesSeen++) this.touched.add(causes[this.causesSeen]!.surface);
  }

  private closeStep(step: number): void {
    let changed = false;
    for (const id of this.touched) {
      const mark = this.ledger.markOf(id);
      const known = this.surfaces.get(id) ?? { steps: [], marks: [] };
      if (known.marks[known.marks.length - 1] === mark) continue;
      if (known.steps.length === 0) this.surfaces.set(id, known);
      known.steps.push(step);
      known.marks.push(mark);
      changed = true;
    }
    this.touched.clear();
    if (this.keeps === 'lastStep') this.causesSeen = 0;
    if (!changed) return;
    if (this.changes[this.changes.length - 1] !== step) this.changes.push(step);
    this.known = { from: 0, before: 0, marks: this.known.marks };
  }
}
