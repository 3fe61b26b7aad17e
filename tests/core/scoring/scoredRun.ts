import type { Break } from '../../../src/core/ledger/break.ts';
import type { TaskId, TaskReport } from '../../../src/core/procedure/observation.ts';
import type { HandlingMeasures, RunResult } from '../../../src/core/run/result.ts';
import { scenarioSchema, type Scenario, type ScenarioSource } from '../../../src/core/scenario/schema.ts';

/** A scenario of six minutes with the default rubric, or with parts of another. */
export const scenarioWith = (rubric: ScenarioSource['rubric'] = {}): Scenario =>
  scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'scored', title: 'Scored', summary: 'For the tests of scores.', seed: 1, station: 'field', rubric });

const ORDER: readonly TaskId[] = ['gel', 'view', 'park', 'anaesthetic', 'ready', 'rubbish'];

export const task = (id: TaskId, doneStep: number | null, outOfOrderAfter: TaskId | null = null): TaskReport => ({
  task: id, critical: id === 'gel' || id === 'ready', doneStep, outOfOrderAfter, progress: doneStep === null ? 0 : 1,
});

/** Every task done, one each ten seconds. */
export const allTasks = (): TaskReport[] => ORDER.map((id, k) => task(id, (k + 1) * 1200));

const still = { movements: 0, median: null, roughest: [] };

export const measured = (parts: Partial<HandlingMeasures> = {}): HandlingMeasures => ({
  driftStep: { left: null, right: null }, drops: [], smoothness: { left: still, right: still },
  clearance: [{ hand: 'right', thing: 'edge.right', metres: 0.02, step: 400 }], ...parts,
});

interface Parts extends Partial<Omit<RunResult, 'progress' | 'handling'>> {
  readonly tasks?: readonly TaskReport[];
  readonly steadyShare?: number | null;
  readonly sharpsBinned?: readonly string[];
  readonly driftM?: RunResult['handling']['driftM'];
  readonly measured?: HandlingMeasures | null;
}

/** A run of two minutes in which everything was done well, with some parts otherwise. */
export function runWith({ tasks = allTasks(), steadyShare = 0.9, sharpsBinned = [], driftM = { left: 0, right: 0 }, measured: measures = measured(), ...parts }: Parts = {}): RunResult {
  const progress = { tasks, current: 'finished', hint: '', steadyShare, sharpsBinned } as const;
  const handling = { pathM: { left: 12.5, right: 14 }, driftM, dropped: [], measured: measures };
  return { steps: 14400, breaks: [], words: {}, notices: [], remedies: [], cues: [], challenges: [], progress, handling, ...parts };
}

/** A glove on a rail at 10 s, a major break, neither said nor put right; `parts` say what was otherwise. */
export const broken = (parts: Partial<Break> = {}): Break => ({
  number: 1, rule: 'glove-on-rail', step: 1200, x: 0, y: 1, surface: 'glove.left#1:fingers', against: 'rail.left', severity: 'major', reach: 'none',
  spread: [], noticedStep: null, remediedStep: null, remedies: [], ...parts,
});

export const SAID = { noticedStep: 1500 } as const;
export const PUT_RIGHT = { remediedStep: 4000, remedies: ['changeGlove'] } as const;
