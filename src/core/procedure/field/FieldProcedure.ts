import { initialTransition, transition } from 'xstate';
import { assert } from '../../base/assert.ts';
import type { StateHash } from '../../base/hash.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { taskReport, type DoneTasks } from '../done.ts';
import { Hold, INTERRUPTION_S, type HoldState } from '../Hold.ts';
import type { NextAct } from '../nextAct.ts';
import type { FieldObservation, FieldTaskId, Progress, TaskReport } from '../observation.ts';
import { fieldMachine, type FieldEvent, type FieldSnapshot } from './fieldMachine.ts';
import { hintFor } from './hints.ts';
import { ANAESTHETIC_ENOUGH, GEL_ENOUGH, SLIDING_S } from './limits.ts';
import { fieldActs } from './nextActs.ts';
import { see, unseen, type Seen } from './seen.ts';
import { isCritical, tasksOf } from './tasks.ts';

type Holds = Readonly<Record<'view' | 'park' | 'slide' | 'ready', Hold>>;

interface Saved {
  readonly step: number;
  readonly value: FieldSnapshot['value'];
  readonly done: DoneTasks<FieldTaskId>;
  readonly holds: Readonly<Record<keyof Holds, HoldState>>;
  readonly stepsAtSite: number;
  readonly stepsSteady: number;
  readonly seen: Seen;
}

/**
 * Judges completeness, order and steadiness of the work on the field from one observation per step. A done task stays done, with
 * two exceptions: a parked probe that slides off before the needle is ready (or that lay there before there was a view) must be
 * parked again, and rubbish that comes up later must go into the bin as well.
 */
export class FieldProcedure {
  private readonly scenario: Scenario;
  private readonly tasks: readonly FieldTaskId[];
  private readonly holds: Holds;
  private machine: FieldSnapshot = initialTransition(fieldMachine)[0];
  private seen: Seen;
  private step = -1;
  private stepsAtSite = 0;
  private stepsSteady = 0;

  constructor(scenario: Scenario) {
    const { steadyViewS, parkedS, readyS } = scenario.tasks;
    this.scenario = scenario;
    this.tasks = tasksOf(scenario);
    this.seen = unseen(scenario);
    this.holds = {
      view: new Hold(steadyViewS, INTERRUPTION_S),
      park: new Hold(parkedS, INTERRUPTION_S),
      slide: new Hold(SLIDING_S, 0),
      ready: new Hold(readyS, INTERRUPTION_S),
    };
  }

  /** Takes what was seen in the next step. Throws when steps do not rise. */
  observe(o: FieldObservation): void {
    assert(o.step > this.step, `observation of step ${o.step} after step ${this.step}`);
    this.step = o.step;
    this.seen = see(o, this.scenario);
    if (this.seen.probeAtSite) this.stepsAtSite++;
    if (this.seen.probeSteady) this.stepsSteady++;
    // In the order of the work, so that what happens in one step does not count as the wrong way round.
    if (this.done.gel === null && this.seen.gel >= GEL_ENOUGH) this.send('gel.applied');
    this.judgeProbe();
    if (this.done.anaesthetic === null && this.seen.anaesthetic >= ANAESTHETIC_ENOUGH) this.send('anaesthetic.given');
    this.judgeReady();
    this.judgeRubbish();
  }

  private get done(): DoneTasks<FieldTaskId> {
    return this.machine.context.done;
  }

  /** Whether the probe was never used, is to be parked, slid off, or is parked. */
  private get parking(): FieldSnapshot['value']['park'] {
    return this.machine.value.park;
  }

  private send(type: FieldEvent['type']): void {
    this.machine = transition(fieldMachine, this.machine, { type, step: this.step })[0];
  }

  private judgeProbe(): void {
    const { seen, holds } = this;
    if (this.parking === 'unused' && seen.probeAtSite) this.send('probe.reached');
    if (this.done.view === null && holds.view.feed(seen.probeSteady)) this.send('view.held');
    if (seen.probeHeldBy !== null || this.parking === 'unused') {
      holds.park.clear();
      holds.slide.clear();
      return;
    }
    const stayed = holds.park.feed(seen.probeLies);
    const slid = holds.slide.feed(seen.probeSlides);
    if (stayed && this.done.park === null) this.send('probe.stayed');
    if (slid && this.done.park !== null) {
      this.send('probe.slid');
      holds.slide.clear();
    }
  }

  private judgeReady(): void {
    const { seen } = this;
    const both = seen.probeAtSite && seen.needleAtSite && seen.probeHeldBy !== seen.needleHeldBy;
    if (this.done.ready === null && this.holds.ready.feed(both)) this.send('needle.held');
  }

  private judgeRubbish(): void {
    if (!this.tasks.includes('rubbish')) return;
    const left = this.seen.rubbishLeft.length > 0;
    if (!left && this.done.rubbish === null) this.send('rubbish.cleared');
    if (left && this.done.rubbish !== null) this.send('rubbish.appeared');
  }

  /** Where the work stands after the last observation. */
  get progress(): Progress {
    const tasks = this.tasks.map((task) => this.report(task));
    const { current } = this;
    return {
      tasks,
      current,
      hint: hintFor(current, { seen: this.seen, probeSlid: this.parking === 'slid', scenario: this.scenario }),
      steadyShare: this.stepsAtSite === 0 ? null : this.stepsSteady / this.stepsAtSite,
      sharpsBinned: this.seen.sharpsBinned,
    };
  }

  /** What comes next: holds of hands, and what the assistant is asked for. */
  get nextActs(): readonly NextAct[] {
    return fieldActs(this.current, this.seen, this.scenario);
  }

  private get current(): FieldTaskId | 'finished' {
    return this.tasks.find((task) => this.done[task] === null) ?? 'finished';
  }

  private report(task: FieldTaskId): TaskReport {
    return taskReport(task, isCritical(task), this.done[task], () => this.shareOf(task));
  }

  /** Part of an open task that is done, 0 to 1. */
  private shareOf(task: FieldTaskId): number {
    switch (task) {
      case 'gel':
        return Math.min(1, this.seen.gel / GEL_ENOUGH);
      case 'anaesthetic':
        return Math.min(1, this.seen.anaesthetic / ANAESTHETIC_ENOUGH);
      case 'rubbish': {
        const all = Math.max(this.seen.rubbishLeft.length, this.scenario.items.filter((item) => item.rubbish).length);
        return 1 - this.seen.rubbishLeft.length / all;
      }
      case 'view':
      case 'park':
      case 'ready':
        return this.holds[task].share;
    }
  }

  /** Plain JSON from which `restore` goes on as if nothing had been between. */
  snapshot(): unknown {
    const { view, park, slide, ready } = this.holds;
    const holds = { view: view.save(), park: park.save(), slide: slide.save(), ready: ready.save() };
    const saved: Saved = { step: this.step, value: this.machine.value, done: this.done, holds, stepsAtSite: this.stepsAtSite, stepsSteady: this.stepsSteady, seen: this.seen };
    return JSON.parse(JSON.stringify(saved));
  }

  /** Takes a value of `snapshot` of a procedure of the same scenario. */
  restore(snapshot: unknown): void {
    const saved = JSON.parse(JSON.stringify(snapshot)) as Saved;
    this.step = saved.step;
    this.machine = fieldMachine.resolveState({ value: saved.value, context: { done: saved.done } });
    this.stepsAtSite = saved.stepsAtSite;
    this.stepsSteady = saved.stepsSteady;
    this.seen = saved.seen;
    for (const key of ['view', 'park', 'slide', 'ready'] as const) this.holds[key].restore(saved.holds[key]);
  }

  /** Mixes everything on which later steps depend. */
  hashInto(hash: StateHash): void {
    hash.addText(JSON.stringify(this.snapshot()));
  }
}
