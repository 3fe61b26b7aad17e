import { initialTransition, transition } from 'xstate';
import { assert } from '../../base/assert.ts';
import type { StateHash } from '../../base/hash.ts';
import { SIDES } from '../../base/side.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { taskReport, type DoneTasks } from '../done.ts';
import { Hold, INTERRUPTION_S, type HoldState } from '../Hold.ts';
import type { NextAct } from '../nextAct.ts';
import { GOWN_TASKS, type GownObservation, type GownTaskId, type Progress } from '../observation.ts';
import { gownHint } from './hints.ts';
import { gownMachine, type GownEvent, type GownSnapshot } from './gownMachine.ts';
import { gownActs } from './nextActs.ts';
import { areArmsIn, glovesOn, isCuffShort, isFresh, isInCuff, isOpened, UNSEEN, type Seen } from './seen.ts';
import { isCritical } from './tasks.ts';

/** How long the gown must hang open and clear, in seconds: it has fallen open and does not swing on to the floor. */
const OPEN_S = 0.5;

interface Saved {
  readonly step: number;
  readonly value: GownSnapshot['value'];
  readonly done: DoneTasks<GownTaskId>;
  readonly opened: HoldState;
  readonly waited: HoldState;
  readonly seen: Seen;
}

/** Judges completeness and order of gowning and gloving from one observation per step. A fresh gown begins everything anew. */
export class GownProcedure {
  private readonly opened = new Hold(OPEN_S, INTERRUPTION_S);
  private readonly waited: Hold;
  private readonly knitM: number;
  private machine: GownSnapshot = initialTransition(gownMachine)[0];
  private seen: Seen = UNSEEN;
  private step = -1;

  constructor(scenario: Scenario) {
    this.knitM = scenario.gown.knitM;
    this.waited = new Hold(scenario.tasks.waitS, INTERRUPTION_S);
  }

  /** Takes what was seen in the next step. Throws when steps do not rise. */
  observe({ step, ...seen }: GownObservation): void {
    assert(step > this.step, `observation of step ${step} after step ${this.step}`);
    const before = this.seen;
    this.step = step;
    this.seen = seen;
    if (isFresh(seen, before)) this.beginAnew();
    const { done } = this;
    if (done.secondGlove !== null && glovesOn(seen) < 2) this.send('glove.off');
    // In the order of the work, so that what happens in one step does not count as the wrong way round.
    this.judge('opened', this.opened.feed(isOpened(seen)));
    this.judge('armsIn', areArmsIn(seen));
    this.judge('tied', seen.gown === 'tied');
    this.judge('firstGlove', glovesOn(seen) >= 1);
    this.judge('secondGlove', glovesOn(seen) === 2 && SIDES.every((side) => !isCuffShort(seen, side, this.knitM)));
    this.judge('turned', seen.card === 'tied');
    this.judge('waited', this.waited.feed(glovesOn(seen) === 2 && seen.card === 'tied' && seen.handsTogether));
  }

  /** Where the work stands after the last observation. */
  get progress(): Progress {
    const tasks = GOWN_TASKS.map((task) => taskReport(task, isCritical(task), this.done[task], () => this.shareOf(task)));
    const { current } = this;
    return { tasks, current, hint: gownHint(current, this.seen, this.knitM), steadyShare: null, sharpsBinned: [] };
  }

  /** What comes next: holds of hands, and what the assistant is asked for. */
  get nextActs(): readonly NextAct[] {
    return gownActs(this.current, this.seen, this.knitM);
  }

  /** Plain JSON from which `restore` goes on as if nothing had been between. */
  snapshot(): unknown {
    const saved: Saved = { step: this.step, value: this.machine.value, done: this.done, opened: this.opened.save(), waited: this.waited.save(), seen: this.seen };
    return JSON.parse(JSON.stringify(saved));
  }

  /** Takes a value of `snapshot` of a procedure of the same scenario. */
  restore(snapshot: unknown): void {
    const saved = JSON.parse(JSON.stringify(snapshot)) as Saved;
    this.step = saved.step;
    this.machine = gownMachine.resolveState({ value: saved.value, context: { done: saved.done } });
    this.opened.restore(saved.opened);
    this.waited.restore(saved.waited);
    this.seen = saved.seen;
  }

  /** Mixes everything on which later steps depend. */
  hashInto(hash: StateHash): void {
    hash.addText(JSON.stringify(this.snapshot()));
  }

  private get done(): DoneTasks<GownTaskId> {
    return this.machine.context.done;
  }

  private get current(): GownTaskId | 'finished' {
    return GOWN_TASKS.find((task) => this.done[task] === null) ?? 'finished';
  }

  private judge(task: GownTaskId, isSo: boolean): void {
    if (isSo && this.done[task] === null) this.send(`done.${task}`);
  }

  private send(type: GownEvent['type']): void {
    this.machine = transition(gownMachine, this.machine, { type, step: this.step })[0];
  }

  private beginAnew(): void {
    this.send('gown.fresh');
    this.opened.clear();
    this.waited.clear();
  }

  /** Part of an open task that is done, 0 to 1. */
  private shareOf(task: GownTaskId): number {
    const { seen } = this;
    switch (task) {
      case 'opened':
        return this.opened.share;
      case 'armsIn':
        return SIDES.filter((side) => isInCuff(seen, side)).length / 2;
      case 'waited':
        return this.waited.share;
      default:
        return 0;
    }
  }
}
