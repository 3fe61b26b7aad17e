import { z } from 'zod';
import { commandSchema, type Command, type RemedyId } from '../commands/command.ts';
import { FIELD_TASKS, GOWN_TASKS, SHEATH_TASKS } from '../procedure/observation.ts';
import { CLEARANCE_THINGS } from '../room/clearanceThings.ts';
import type { RunResult } from '../run/result.ts';

const step = z.int().min(0);
const stepOrNull = step.nullable();
const metres = z.number();
const bothHands = z.strictObject({ right: metres, left: metres });

/** The remedies of the list of commands. */
const remedy = z.custom<RemedyId>((value) => commandSchema.safeParse({ type: 'remedy.start', remedy: value } as Command).success, 'is not a remedy');

const spread = z.strictObject({ surface: z.string(), depth: z.int().min(0), step, touch: z.int().nullable(), from: z.string().nullable() });

const sterilityBreak = z.strictObject({
  number: z.int().min(1),
  rule: z.string(),
  step,
  x: metres,
  y: metres,
  surface: z.string(),
  against: z.string().nullable(),
  severity: z.enum(['minor', 'major', 'critical']),
  reach: z.enum(['none', 'field', 'device', 'site']),
  spread: z.array(spread),
  noticedStep: stepOrNull,
  remediedStep: stepOrNull,
  remedies: z.array(remedy),
  escalatedBy: z.array(z.string()).exactOptional(),
});

const side = z.enum(['right', 'left']);

const smoothness = z.strictObject({
  movements: z.int().min(0),
  median: z.number().nullable(),
  roughest: z.array(z.strictObject({ step, value: z.number() })),
});

const measured = z.strictObject({
  driftStep: z.strictObject({ right: stepOrNull, left: stepOrNull }),
  drops: z.array(z.strictObject({ thing: z.string(), step })),
  smoothness: z.strictObject({ right: smoothness, left: smoothness }),
  clearance: z.array(z.strictObject({ hand: side, thing: z.enum(CLEARANCE_THINGS), metres, step })),
});

const taskId = z.enum([...GOWN_TASKS, ...SHEATH_TASKS, ...FIELD_TASKS]);

const progress = z.strictObject({
  tasks: z.array(z.strictObject({ task: taskId, critical: z.boolean(), doneStep: stepOrNull, outOfOrderAfter: taskId.nullable(), progress: z.number() })),
  current: z.union([taskId, z.literal('finished')]),
  hint: z.string(),
  steadyShare: z.number().nullable(),
  sharpsBinned: z.array(z.string()),
});

const challenge = z.strictObject({
  step,
  break: z.int().min(1),
  said: z.array(z.strictObject({ step, words: z.string() })),
  answered: z.strictObject({ how: z.enum(['stop', 'fine']), step }).nullable(),
  stillInTime: z.boolean().nullable(),
});

/** Shape of a run's result in a file. Lengths in metres, times in steps. */
export const resultSchema: z.ZodType<RunResult> = z.strictObject({
  steps: step,
  breaks: z.array(sterilityBreak),
  words: z.record(z.string(), z.string()),
  notices: z.array(z.strictObject({ step, breaks: z.array(z.int()) })),
  remedies: z.array(z.strictObject({ remedy, startStep: step, endStep: step, things: z.array(z.string()) })),
  cues: z.array(z.strictObject({ step, kind: z.string(), words: z.string() })),
  challenges: z.array(challenge).default([]),
  progress,
  handling: z.strictObject({ pathM: bothHands, driftM: bothHands, dropped: z.array(z.string()), measured: measured.nullable() }),
});
