import type { SettledState } from '../../core/room/settle.ts';
import { scenarioHash } from '../../core/scenario/scenarioHash.ts';
import type { Scenario } from '../../core/scenario/schema.ts';

/** Settled states kept at a time; each is a few hundred kilobytes. */
const KEPT_MAX = 3;

/** Starts a worker that answers a scenario with its settled state. */
export type StartSettler = () => Worker;

/**
 * Lets the scene of a scenario come to rest in a worker before it is needed, so that a run opens at once. It works on one scenario at
 * a time: the wish for another ends the work on the one before.
 */
export class SettleAhead {
  private known: Settling[] = [];

  constructor(private readonly start: StartSettler = () => new Worker(new URL('./settleWorker.ts', import.meta.url), { type: 'module' })) {}

  /** The settled state of a scenario, begun with the first call; undefined where there is none to be had and a run settles by itself. */
  settled(scenario: Scenario): Promise<SettledState | undefined> {
    const key = keyOf(scenario);
    let settling = this.known.find((one) => one.key === key && !one.failed);
    if (!settling) {
      for (const one of this.known) one.stop();
      settling = new Settling(key, scenario, this.start);
    }
    this.known = [settling, ...this.known.filter((one) => one !== settling && !one.failed)].slice(0, KEPT_MAX);
    return settling.state;
  }
}

/** One scene that comes to rest in a worker of its own. */
class Settling {
  readonly state: Promise<SettledState | undefined>;
  /** Nothing came of it and nothing will. */
  failed = false;
  private worker: Worker | null = null;
  private finish: (state: SettledState | undefined) => void = () => {};

  constructor(readonly key: string, scenario: Scenario, start: StartSettler) {
    this.state = new Promise((resolve) => (this.finish = resolve));
    try {
      this.worker = start();
      this.worker.addEventListener('message', ({ data }: MessageEvent<SettledState>) => this.end(data));
      this.worker.addEventListener('error', () => this.end(undefined));
      this.worker.postMessage(scenario);
    } catch {
      this.end(undefined);
    }
  }

  /** Ends the work, unless it is done. */
  stop(): void {
    if (this.worker) this.end(undefined);
  }

  private end(state: SettledState | undefined): void {
    this.worker?.terminate();
    this.worker = null;
    this.failed = state === undefined;
    this.finish(state);
  }
}

/** Settling depends on the room, not on seed or coaching, so that a run with others uses the same state. */
const keyOf = (scenario: Scenario): string => scenarioHash({ ...scenario, seed: 0, coaching: 'shown' });
