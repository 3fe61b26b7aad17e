import { SIDES, signOf, type Side } from '../../core/base/side.ts';
import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { Command } from '../../core/commands/command.ts';
import type { Break } from '../../core/ledger/break.ts';
import type { Recorder } from '../../core/recording/Recorder.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RoomPicture } from '../../core/room/picture.ts';
import type { RunContract } from '../../core/run/contract.ts';
import type { CueReport } from '../../core/run/result.ts';
import { HandsControl } from '../input/HandsControl.ts';
import { HandTargets } from '../input/HandTargets.ts';
import { InputMode } from '../input/InputMode.ts';
import { emptyGripWords } from './emptyGripWords.ts';
import { FrameClock } from './FrameClock.ts';
import type { RunKeeper } from './RunKeeper.ts';

export type Coaching = 'shown' | 'spoken' | 'silent';
export type Slowdown = 1 | 2 | 4;

export interface LiveRunParts {
  readonly run: RunContract;
  readonly recorder: Recorder;
  readonly keeper: RunKeeper;
  readonly coaching: Coaching;
  readonly slowdown: Slowdown;
}

/** A short answer to something the person did. */
export interface Note {
  readonly words: string;
  readonly step: number;
}

/** Most that a test may ask for at once: ten minutes. */
const ADVANCE_STEPS_MAX = 600 * STEPS_PER_SECOND;

/**
 * A run being played: takes commands from the controls, steps the run, records it, keeps the journal and the two pictures that the
 * view blends. The only caller of `run.step` on the page.
 */
export class LiveRun {
  readonly run: RunContract;
  readonly coaching: Coaching;
  /** Id of the run, which its recording carries. */
  readonly id: string;
  readonly mode = new InputMode();
  readonly hands: HandsControl;
  readonly clock: FrameClock;
  previous: RoomPicture;
  current: RoomPicture;
  /** Newest cue and newest break since the run began on this page. */
  cue: CueReport | null = null;
  newBreak: Break | null = null;
  note: Note | null = null;
  /** The clock stands and only `stepMany` makes steps. */
  held = false;
  private readonly recorder: Recorder;
  private readonly keeper: RunKeeper;
  private readonly listeners = new Set<() => void>();
  private readonly log: { readonly step: number; readonly command: Command }[] = [];
  /** What each hand held last. */
  private readonly lastHeld: Record<Side, string | null> = { left: null, right: null };
  private version = 0;

  constructor(parts: LiveRunParts) {
    this.run = parts.run;
    this.coaching = parts.coaching;
    this.id = parts.recorder.header.runId;
    this.recorder = parts.recorder;
    this.keeper = parts.keeper;
    this.clock = new FrameClock(parts.slowdown);
    this.current = this.run.picture();
    this.previous = this.current;
    this.hands = new HandsControl(this.mode, new HandTargets(targetsOf(this.current)), holdsOf(this.current), (side) => this.current.hands[side]);
    this.mode.subscribe(() => this.publish());
    if (this.run.stepCount === 0) this.hands.order({ type: 'pace', slowdown: parts.slowdown });
  }

  /** Stops the clock for good: from now on only `stepMany` makes steps, while the controls go on working. */
  hold(): void {
    this.held = true;
  }

  /** Does the steps due after `elapsedMs` of real time, unless paused. */
  advance(elapsedMs: number): void {
    if (!this.mode.playing || this.held) {
      this.clock.reset();
      return;
    }
    this.stepMany(this.clock.take(elapsedMs));
  }

  /** Share of the way from the previous picture to the current one that is to be seen now. */
  get blend(): number {
    const span = this.current.step - this.previous.step;
    return this.mode.playing && span > 0 ? (span - 1 + this.clock.blend) / span : 1;
  }

  /** Does `count` steps at once, whatever the mode. */
  stepMany(count: number): void {
    const steps = Math.min(count, ADVANCE_STEPS_MAX);
    for (let k = 0; k < steps && !this.run.finished; k++) {
      this.step();
    }
    if (steps > 0) {
      this.previous = this.current;
      this.current = this.run.picture();
      this.answerEmptyGrips();
      if (this.held) this.publish();
    }
  }

  private answerEmptyGrips(): void {
    for (const side of SIDES) this.lastHeld[side] = this.current.hands[side].holds ?? this.lastHeld[side];
    for (const { side, held } of this.hands.settleGrips(holdsOf(this.current), this.run.stepCount)) {
      const words = emptyGripWords(side, held ? this.lastHeld[side] : null, this.current);
      if (words) this.say(words);
    }
  }

  private step(): void {
    const commands = this.hands.take(this.run.stepCount);
    for (const command of commands) this.log.push({ step: this.run.stepCount, command });
    const outcome = this.run.step(commands);
    this.recorder.played(commands, this.run);
    this.keeper.afterStep(this.recorder, this.run);
    if (outcome.cue) this.cue = outcome.cue;
    const newest = outcome.newBreaks.at(-1);
    if (newest) this.newBreak = newest;
    if (outcome.cue || newest || outcome.finished) this.publish();
  }

  /** Answers the person in a few words, for a few seconds. */
  say(words: string): void {
    this.note = { words, step: this.run.stepCount };
    this.publish();
  }

  /** Slower or faster from the next step on; recorded with the run. */
  setSlowdown(slowdown: Slowdown): void {
    if (this.clock.slowdown === slowdown) return;
    this.clock.slowdown = slowdown;
    this.hands.order({ type: 'pace', slowdown });
    this.publish();
  }

  /** Ends the run and gives its recording. */
  async end(): Promise<RunFile> {
    if (!this.run.finished) {
      this.hands.order({ type: 'run.end' });
      this.stepMany(1);
    }
    const file = this.recorder.finish(this.run);
    await this.keeper.finished(file);
    return file;
  }

  /** The page lets go of the run; it can be taken up again. */
  leave(): Promise<void> {
    return this.keeper.left(this.recorder, this.run);
  }

  /** One sentence while this browser does not keep the run, or null. */
  get keptNotice(): string | null {
    return this.keeper.notice;
  }

  commandsSoFar(): readonly { readonly step: number; readonly command: Command }[] {
    return this.log;
  }

  get seconds(): number {
    return this.run.stepCount / STEPS_PER_SECOND;
  }

  /** Number that changes when panels should look again. */
  get revision(): number {
    return this.version;
  }

  publish(): void {
    this.version++;
    for (const listener of this.listeners) listener();
  }

  subscribe(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}

/** Where the hands are asked to be when the page begins; a turn is the angle of the fingers above the horizontal. */
function targetsOf({ hands }: RoomPicture): Record<Side, { x: number; y: number; angleDeg: number }> {
  const of = (side: Side): { x: number; y: number; angleDeg: number } => {
    const { targetX, targetY, c, s } = hands[side];
    return { x: targetX, y: targetY, angleDeg: (Math.atan2(s, -signOf(side) * c) * 180) / Math.PI };
  };
  return { left: of('left'), right: of('right') };
}

const holdsOf = (picture: RoomPicture): Record<Side, boolean> => ({ left: picture.hands.left.holds !== null, right: picture.hands.right.holds !== null });
