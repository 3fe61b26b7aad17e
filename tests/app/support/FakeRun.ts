import { signOf, type Side } from '../../../src/core/base/side.ts';
import type { Command, RequestId } from '../../../src/core/commands/command.ts';
import type { Break } from '../../../src/core/ledger/break.ts';
import type { NextHold } from '../../../src/core/procedure/nextHold.ts';
import type { Progress } from '../../../src/core/procedure/observation.ts';
import { lookOf, standingAt } from '../../../src/core/room/assistant/assistantBody.ts';
import type { HandPicture, RoomPicture } from '../../../src/core/room/picture.ts';
import type { RemedyStatus, RunContract, RunSnapshot, StepOutcome, TouchLine } from '../../../src/core/run/contract.ts';
import type { ChallengeReport, CueReport, RunResult } from '../../../src/core/run/result.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';

interface FakeHand {
  x: number;
  y: number;
  holds: string | null;
}

/** A run without physics for tests of the page: hands are at once where they are sent, and grip what `reach` says. */
export class FakeRun implements RunContract {
  stepCount = 0;
  finished = false;
  breaks: Break[] = [];
  cues: CueReport[] = [];
  challenges: ChallengeReport[] = [];
  remedy: RemedyStatus | null = null;
  nextHolds: NextHold[] = [];
  nextRequest: RequestId | null = null;
  /** What a hand takes hold of when it closes; null is nothing. */
  reach: Record<Side, string | null> = { left: null, right: null };
  readonly received: { readonly step: number; readonly command: Command }[] = [];
  progress: Progress = { tasks: [], current: 'gel', hint: 'Squeeze gel on to the site.', steadyShare: null, sharpsBinned: [] };
  private readonly hands: Record<Side, FakeHand> = { left: { x: 0.25, y: 1.25, holds: null }, right: { x: -0.25, y: 1.25, holds: null } };

  constructor(
    readonly scenario: Scenario,
    readonly seed = 1,
  ) {}

  step(commands: readonly Command[]): StepOutcome {
    for (const command of commands) this.obey(command);
    this.stepCount++;
    return { step: this.stepCount, facts: [], newBreaks: [], cue: null, finished: this.finished };
  }

  private obey(command: Command): void {
    this.received.push({ step: this.stepCount, command });
    if (command.type === 'hand.move') Object.assign(this.hands[command.hand], { x: command.xMm / 1000, y: command.yMm / 1000 });
    if (command.type === 'hand.grip') this.hands[command.hand].holds = this.reach[command.hand];
    if (command.type === 'hand.release') this.hands[command.hand].holds = null;
    if (command.type === 'run.end') this.finished = true;
  }

  /** Takes away what a hand holds, as a slip does. */
  slip(side: Side): void {
    this.hands[side].holds = null;
  }

  picture(): RoomPicture {
    return {
      step: this.stepCount,
      scenario: this.scenario,
      torsoX: 0,
      hands: { left: this.handPicture('left'), right: this.handPicture('right') },
      assistant: lookOf(standingAt(1.65), 1.65),
      strands: [],
      items: [],
      bedUpM: 0,
      patientOutline: [],
      skinX: new Float64Array(0),
      skinY: new Float64Array(0),
      skinSurfaces: [],
      gelOnSite: 0,
      coveredM: 0,
      gelInSheathMl: 0,
      foldedM: 0,
      gown: null,
      fingersInFold: [],
      outletX: 1,
      outletY: 0.9,
      levelX: new Float64Array(0),
      levelY: new Float64Array(0),
      fixed: {},
      marks: new Map(),
    };
  }

  private handPicture(side: Side): HandPicture {
    const { x, y, holds } = this.hands[side];
    const empty = { shoulderX: 0, shoulderY: 0, elbowX: 0, elbowY: 0, wristX: 0, wristY: 0 };
    const surfaces = { fingers: '', palm: '', back: '', cuff: '', lowerSleeve: '', upperSleeve: '', outerSleeve: '' };
    return { side, pose: 'open', x, y, c: -signOf(side), s: 0, ...empty, gripAlong: 0.085, holds, targetX: x, targetY: y, surfaces };
  }

  touchLines(): readonly TouchLine[] {
    return [];
  }

  heldWords(side: Side): { readonly what: string; readonly state: string; readonly broken: boolean } {
    return { what: this.hands[side].holds ?? 'empty', state: 'sterile', broken: false };
  }

  result(): RunResult {
    const handling = { pathM: { left: 0, right: 0 }, driftM: { left: 0, right: 0 }, dropped: [], measured: null };
    return { steps: this.stepCount, breaks: this.breaks, words: {}, notices: [], remedies: [], cues: this.cues, challenges: this.challenges, progress: this.progress, handling };
  }

  hash(): string {
    return this.stepCount.toString(16).padStart(16, '0');
  }

  snapshot(): RunSnapshot {
    return { step: this.stepCount, parts: {} };
  }

  restore(snapshot: RunSnapshot): void {
    this.stepCount = snapshot.step;
  }
}
