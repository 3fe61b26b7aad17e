import type { RemedyId } from '../commands/command.ts';
import { SIDES, type Side } from '../base/side.ts';
import { secondsToSteps, STEPS_PER_SECOND } from '../base/time.ts';
import type { RemedyStatus } from './remedyStatus.ts';
import type { HandState } from './handState.ts';
import { levelAt } from './level.ts';
import type { Scene } from './scene.ts';

/**
 * Time that each remedy takes in seconds, common practice; preparing and draping again is shortened (labels ask for 30 s of strokes
 * and 3 minutes of drying), which the report says. A scenario scales all of them with policy.remedySeconds.
 */
export const REMEDY_SECONDS: Readonly<Record<RemedyId, number>> = {
  changeGlove: 20,
  changeGownAndGloves: 60,
  replaceItem: 8,
  newSheath: 45,
  coverDrape: 25,
  prepAndDrape: 90,
};

/** Hands are clear of the field when the palm is this far above it, and still below this speed (m, m/s). */
export const CLEAR_M = 0.1;
const STILL_MPS = 0.04;

interface Job {
  readonly remedy: RemedyId;
  /** 'left' or 'right', the id of an item, or empty. */
  readonly target: string;
  readonly startStep: number;
  doneSteps: number;
  /** The assistant is at it. */
  helped: boolean;
}

/** A remedy under way: it waits until the hands it concerns are empty, still and clear of the field, and runs only while they are. */
export class Remedies {
  private job: Job | null = null;

  constructor(private readonly scene: Scene) {}

  get active(): Job | null {
    return this.job;
  }

  start(remedy: RemedyId, target: string, step: number): void {
    if (this.job) return;
    this.job = { remedy, target, startStep: step, doneSteps: 0, helped: false };
  }

  cancel(): void {
    this.job = null;
  }

  /** Counts one step. Returns the job when it is done. Where a glove is changed by hand, `help` does it: it says whether the assistant is at it. */
  step(hands: Readonly<Record<Side, HandState>>, humpX: number, help: (side: Side, isReady: boolean) => boolean): Job | null {
    const { job } = this;
    if (!job) return null;
    if (this.isByHand(job)) {
      job.helped = help(job.target as Side, this.handsReady(job, hands, humpX));
      return null;
    }
    if (!this.handsReady(job, hands, humpX)) return null;
    job.doneSteps++;
    if (job.doneSteps < this.stepsOf(job.remedy)) return null;
    this.job = null;
    return job;
  }

  status(hands: Readonly<Record<Side, HandState>>, humpX: number): RemedyStatus | null {
    const { job } = this;
    if (!job) return null;
    const named = { remedy: job.remedy, things: job.target ? [job.target] : [] };
    const isReady = this.handsReady(job, hands, humpX);
    if (this.isByHand(job)) return { ...named, phase: job.helped ? 'running' : isReady ? 'waitingForAssistant' : 'waitingForHands', progress: job.helped ? 0.5 : 0, secondsLeft: null };
    const all = this.stepsOf(job.remedy);
    return {
      ...named,
      phase: isReady ? 'running' : 'waitingForHands',
      progress: job.doneSteps / all,
      secondsLeft: (all - job.doneSteps) / STEPS_PER_SECOND,
    };
  }

  save(): unknown {
    return this.job ? { ...this.job } : null;
  }

  restore(saved: unknown): void {
    this.job = saved ? { ...(saved as Job) } : null;
  }

  private isByHand({ remedy }: Job): boolean {
    return remedy === 'changeGlove' && this.scene.scenario.gown.gloveChange === 'byHand';
  }

  private stepsOf(remedy: RemedyId): number {
    return Math.max(1, secondsToSteps(REMEDY_SECONDS[remedy] * this.scene.scenario.policy.remedySeconds));
  }

  private handsReady(job: Job, hands: Readonly<Record<Side, HandState>>, humpX: number): boolean {
    // A lowered bed comes back up when all is laid anew: clear of the field is then clear of it there.
    const rise = job.remedy === 'prepAndDrape' ? Math.max(0, -this.scene.layout.bedUpM) : 0;
    for (const side of SIDES) {
      const concerned = job.remedy === 'changeGlove' ? side === job.target : job.remedy !== 'replaceItem';
      if (concerned && hands[side].hold) return false;
      if (job.remedy === 'changeGlove' && !concerned) continue;
      const { world } = this.scene;
      const b = this.scene.hands[side];
      const speed2 = world.bodyVx[b]! * world.bodyVx[b]! + world.bodyVy[b]! * world.bodyVy[b]!;
      if (speed2 > STILL_MPS * STILL_MPS) return false;
      if (world.bodyY[b]! < levelAt(this.scene, humpX, world.bodyX[b]!) + rise + CLEAR_M) return false;
    }
    return true;
  }
}
