import { initialTransition, transition } from 'xstate';
import { assert } from '../../base/assert.ts';
import type { StateHash } from '../../base/hash.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { taskReport, type DoneTasks } from '../done.ts';
import { Hold, INTERRUPTION_S, type HoldState } from '../Hold.ts';
import type { NextAct } from '../nextAct.ts';
import { SHEATH_TASKS, type LoadingObservation, type Progress, type SheathTaskId } from '../observation.ts';
import { sheathHint } from './hints.ts';
import { FACE_CLEAR, FACE_CLEAR_S, FACE_SPOILED, OVER_MOUTH_GAP_S, OVER_MOUTH_S, SLIDING_S, TAKEN_S } from './limits.ts';
import { sheathActs } from './nextActs.ts';
import { isFresh, isLaid, isLoose, isOn, isTaken, see, unseen, type Seen } from './seen.ts';
import { sheathMachine, type SheathEvent, type SheathSnapshot } from './sheathMachine.ts';
import { isCritical } from './tasks.ts';

const HOLDS = ['over', 'taken', 'clear', 'laid', 'loose'] as const;
type Holds = Readonly<Record<(typeof HOLDS)[number], Hold>>;

interface Saved {
  readonly step: number;
  readonly value: SheathSnapshot['value'];
  readonly done: DoneTasks<SheathTaskId>;
  readonly holds: Readonly<Record<keyof Holds, HoldState>>;
  readonly seen: Seen;
}

/**
 * Judges completeness and order of loading the probe into its sheath from one observation per step. A done task stays done, with three
 * exceptions: air that comes back under the face before the probe is laid down, a probe that slides off before it is taken up again, and
 * a fresh sheath, with which everything begins anew.
 */
export class SheathProcedure {
  private readonly scenario: Scenario;
  private readonly holds: Holds;
  private machine: SheathSnapshot = initialTransition(sheathMachine)[0];
  private seen: Seen;
  private step = -1;

  constructor(scenario: Scenario) {
    this.scenario = scenario;
    this.seen = unseen(scenario);
    this.holds = {
      over: new Hold(OVER_MOUTH_S, OVER_MOUTH_GAP_S),
      taken: new Hold(TAKEN_S, INTERRUPTION_S),
      clear: new Hold(FACE_CLEAR_S, INTERRUPTION_S),
      laid: new Hold(scenario.tasks.parkedS, INTERRUPTION_S),
      loose: new Hold(SLIDING_S, 0),
    };
  }

  /** Takes what was seen in the next step. Throws when steps do not rise. */
  observe({ step, dropped, packed, used, ...shown }: LoadingObservation): void {
    assert(step > this.step, `observation of step ${step} after step ${this.step}`);
    const before = this.seen;
    // It swings through the mouth and back while it comes to rest.
    const overMouth = this.holds.over.feed(shown.probe.overMouth);
    const seen = see({ ...shown, probe: { ...shown.probe, overMouth } }, { dropped, packed, used }, this.scenario);
    this.step = step;
    this.seen = seen;
    if (isFresh(seen, before)) this.beginAnew();
    // In the order of the work, so that what happens in one step does not count as the wrong way round.
    this.judgeLoading();
    this.judgeAir();
    if (this.done.banded === null && isOn(seen) && seen.bands.head && seen.bands.cord) this.send('bands.put');
    this.judgeLaying();
  }

  private get done(): DoneTasks<SheathTaskId> {
    return this.machine.context.done;
  }

  private send(type: SheathEvent['type']): void {
    this.machine = transition(sheathMachine, this.machine, { type, step: this.step })[0];
  }

  private beginAnew(): void {
    this.send('sheath.fresh');
    for (const key of HOLDS) this.holds[key].clear();
  }

  private judgeLoading(): void {
    const { seen, holds } = this;
    const { gelInsideMl, coveredM } = this.scenario.tasks;
    if (this.done.gelInside === null && seen.gelMl >= gelInsideMl) this.send('gel.inside');
    if (this.done.probeTaken === null && holds.taken.feed(isTaken(seen))) this.send('probe.taken');
    if (this.done.covered === null && isOn(seen) && seen.coveredM >= coveredM) this.send('cord.covered');
  }

  private judgeAir(): void {
    const { seen, holds } = this;
    if (this.done.airOut !== null) {
      if (seen.faceSpoiled <= FACE_SPOILED || this.done.laidDown !== null) return;
      this.send('face.spoiled');
      holds.clear.clear();
    } else if (this.done.probeTaken !== null && holds.clear.feed(isOn(seen) && seen.faceSpoiled <= FACE_CLEAR)) this.send('face.cleared');
  }

  private judgeLaying(): void {
    const { seen, holds } = this;
    if (seen.probe.heldThrough !== null) {
      if (this.done.laidDown !== null) this.send('probe.takenUp');
      holds.laid.clear();
      holds.loose.clear();
      return;
    }
    const stayed = holds.laid.feed(isLaid(seen));
    const slid = holds.loose.feed(isLoose(seen));
    if (stayed && this.done.laidDown === null) this.send('probe.stayed');
    if (slid && this.done.laidDown !== null) this.send('probe.slid');
  }

  /** What comes next: holds of hands, and what the assistant is asked for. */
  get nextActs(): readonly NextAct[] {
    return sheathActs(this.current, this.seen, this.scenario);
  }

  private get current(): SheathTaskId | 'finished' {
    return SHEATH_TASKS.find((task) => this.done[task] === null) ?? 'finished';
  }

  /** Where the work stands after the last observation. */
  get progress(): Progress {
    const tasks = SHEATH_TASKS.map((task) => taskReport(task, isCritical(task), this.done[task], () => this.shareOf(task)));
    const { current } = this;
    return { tasks, current, hint: sheathHint(current, this.seen, this.scenario), steadyShare: null, sharpsBinned: [] };
  }

  /** Part of an open task that is done, 0 to 1. */
  private shareOf(task: SheathTaskId): number {
    const { seen, holds } = this;
    const { gelInsideMl, coveredM } = this.scenario.tasks;
    switch (task) {
      case 'gelInside':
        return Math.min(1, seen.gelMl / gelInsideMl);
      case 'probeTaken':
        return holds.taken.share;
      case 'covered':
        return isOn(seen) ? Math.min(1, seen.coveredM / coveredM) : 0;
      case 'airOut':
        return holds.clear.share;
      case 'banded':
        return (Number(seen.bands.head) + Number(seen.bands.cord)) / 2;
      case 'laidDown':
        return holds.laid.share;
    }
  }

  /** Plain JSON from which `restore` goes on as if nothing had been between. */
  snapshot(): unknown {
    const { over, taken, clear, laid, loose } = this.holds;
    const holds = { over: over.save(), taken: taken.save(), clear: clear.save(), laid: laid.save(), loose: loose.save() };
    const saved: Saved = { step: this.step, value: this.machine.value, done: this.done, holds, seen: this.seen };
    return JSON.parse(JSON.stringify(saved));
  }

  /** Takes a value of `snapshot` of a procedure of the same scenario. */
  restore(snapshot: unknown): void {
    const saved = JSON.parse(JSON.stringify(snapshot)) as Saved;
    this.step = saved.step;
    this.machine = sheathMachine.resolveState({ value: saved.value, context: { done: saved.done } });
    this.seen = saved.seen;
    for (const key of HOLDS) this.holds[key].restore(saved.holds[key]);
  }

  /** Mixes everything on which later steps depend. */
  hashInto(hash: StateHash): void {
    hash.addText(JSON.stringify(this.snapshot()));
  }
}
