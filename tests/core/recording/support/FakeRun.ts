import { StateHash } from '../../../../src/core/base/hash.ts';
import type { Command } from '../../../../src/core/commands/command.ts';
import type { Progress } from '../../../../src/core/procedure/observation.ts';
import type { RoomPicture } from '../../../../src/core/room/picture.ts';
import type { RunContract, RunSnapshot, StepOutcome } from '../../../../src/core/run/contract.ts';
import type { ChallengeReport, RunResult } from '../../../../src/core/run/result.ts';
import { scenarioSchema, type Scenario } from '../../../../src/core/scenario/schema.ts';

const PROGRESS: Progress = { tasks: [], current: 'gel', hint: 'Put gel on the site.', steadyShare: null, sharpsBinned: [] };

const CHALLENGE: ChallengeReport = { step: 7, break: 1, said: [{ step: 7, words: '“Did I see that right?”' }], answered: { how: 'fine', step: 9 }, stillInTime: false };

/** A run without a room: its state is a mixture of all commands so far, so any change of them shows in every later hash. */
export class FakeRun implements RunContract {
  stepCount = 0;
  finished = false;
  readonly progress = PROGRESS;
  readonly nextHolds = [];
  readonly nextRequest = null;
  readonly breaks = [];
  readonly cues = [];
  readonly challenges = [];
  readonly remedy = null;
  readonly scenario: Scenario;
  readonly seed: number;
  private state: string;
  private way = 0;

  constructor(scenario: Scenario, seed: number) {
    this.scenario = scenario;
    this.seed = seed;
    this.state = new StateHash().addText(scenario.id).addInt(seed).digest();
  }

  step(commands: readonly Command[]): StepOutcome {
    for (const command of commands) {
      this.state = new StateHash().addText(this.state).addInt(this.stepCount).addText(JSON.stringify(command)).digest();
      if (command.type === 'hand.move') this.way += command.xMm / 1000;
      if (command.type === 'run.end') this.finished = true;
    }
    this.stepCount++;
    return { step: this.stepCount, facts: [], newBreaks: [], cue: null, finished: this.finished };
  }

  hash(): string {
    return new StateHash().addText(this.state).addInt(this.stepCount).digest();
  }

  result(): RunResult {
    const still = { movements: 0, median: null, roughest: [] };
    const measured = { driftStep: { right: null, left: null }, drops: [{ thing: 'gel', step: 7 }], smoothness: { right: { movements: 1, median: -7.25, roughest: [{ step: 8, value: -7.25 }] }, left: still }, clearance: [] };
    const handling = { pathM: { right: this.way, left: 0.1 + 0.2 }, driftM: { right: 0, left: 0 }, dropped: [], measured };
    return { steps: this.stepCount, breaks: [], words: { state: this.state }, notices: [], remedies: [], cues: [], challenges: [CHALLENGE], progress: PROGRESS, handling };
  }

  snapshot(): RunSnapshot {
    return { step: this.stepCount, parts: { state: this.state, way: this.way, finished: this.finished } };
  }

  restore(snapshot: RunSnapshot): void {
    const { state, way, finished } = snapshot.parts;
    if (typeof state !== 'string' || typeof way !== 'number') throw new Error('Not a snapshot of this run.');
    this.stepCount = snapshot.step;
    this.state = state;
    this.way = way;
    this.finished = finished === true;
  }

  touchLines(): never[] {
    return [];
  }

  heldWords(): { what: string; state: string; broken: boolean } {
    return { what: 'nothing', state: '', broken: false };
  }

  picture(): RoomPicture {
    throw new Error('This run has no room.');
  }
}

export const makeFakeRun = (scenario: Scenario, seed: number): FakeRun => new FakeRun(scenario, seed);

export const testScenario = (): Scenario =>
  scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'recording-test', title: 'Ein Übungsfeld', summary: 'For the tests of recordings.', seed: 7, station: 'field' });
