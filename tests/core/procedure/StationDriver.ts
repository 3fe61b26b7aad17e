import { expect } from 'vitest';
import { secondsToSteps } from '../../../src/core/base/time.ts';
import type { RequestId } from '../../../src/core/commands/command.ts';
import { requestAmong, type NextAct } from '../../../src/core/procedure/nextAct.ts';
import type { Progress, TaskId, TaskReport } from '../../../src/core/procedure/observation.ts';

/** A station's judge of the work, as far as it is driven here. */
interface Judge<Seen> {
  readonly progress: Progress;
  readonly nextActs: readonly NextAct[];
  observe(seen: Seen): void;
}

/** Words by which a hint leads to the assistant. */
const ASKS = /\bAsk\b|\bHave (?:it lowered|the assistant|the cord)/;

/** Says what is to be seen and lets time pass; a verb of a station changes the scene, `for` shows it to the judge. */
export class StationDriver<Seen extends { readonly step: number }, Task extends TaskId, Of extends Judge<Seen>> {
  private step = 0;

  constructor(
    readonly procedure: Of,
    public scene: Seen,
  ) {}

  with(change: Partial<Seen>): this {
    this.scene = { ...this.scene, ...change };
    return this;
  }

  fallen(...dropped: string[]): this {
    return this.with({ dropped } as unknown as Partial<Seen>);
  }

  /** Shows the scene as it is for that many seconds. */
  for(seconds: number): this {
    return this.forSteps(secondsToSteps(seconds));
  }

  forSteps(count: number): this {
    for (let k = 0; k < count; k++) this.procedure.observe({ ...this.scene, step: this.step++ });
    return this;
  }

  /** Number of the last step shown. */
  get lastStep(): number {
    return this.step - 1;
  }

  report(task: Task): TaskReport {
    return this.procedure.progress.tasks.find((one) => one.task === task)!;
  }

  expectDone(...tasks: Task[]): this {
    expect(this.procedure.progress.tasks.filter((one) => one.doneStep !== null).map((one) => one.task)).toEqual(tasks);
    return this;
  }

  expectCurrent(task: Task | 'finished'): this {
    expect(this.procedure.progress.current).toBe(task);
    return this;
  }

  /** The hint, and with one that leads to the assistant some request. */
  expectHint(hint: string): this {
    expect(this.procedure.progress.hint).toBe(hint);
    expect(requestAmong(this.procedure.nextActs) !== null, `a request with "${hint}"`).toBe(ASKS.test(hint));
    return this;
  }

  expectRequest(request: RequestId | null): this {
    expect(requestAmong(this.procedure.nextActs)).toBe(request);
    return this;
  }
}
