import { z } from 'zod';
import type { Score } from '../scoring/score.ts';

const words = z.string().max(400);

const event = z.strictObject({
  kind: z.enum(['break', 'notice', 'remedy', 'task', 'movement', 'drop', 'drift', 'clearance', 'cue']),
  step: z.int().min(0),
  number: z.int().min(1).exactOptional(),
  words,
});

const line = z.strictObject({
  id: z.string(),
  words,
  value: z.number().nullable(),
  unit: z.string(),
  interval: z.tuple([z.number(), z.number()]).exactOptional(),
  points: z.number().nullable(),
  of: z.number().nullable(),
  events: z.array(event),
});

/** Shape of a score in a file. */
export const scoreSchema: z.ZodType<Score> = z.strictObject({
  rubricVersion: z.int().min(1),
  verdict: z.enum(['met', 'notYet']),
  reasons: z.array(
    z.strictObject({
      id: z.enum(['criticalBreaks', 'majorBreaks', 'usedUnsterile', 'criticalTasks', 'standard', 'time']),
      holds: z.boolean(),
      words,
      events: z.array(event),
    }),
  ),
  total: z.number(),
  standard: z.number(),
  parts: z.array(z.strictObject({ id: z.enum(['asepsis', 'procedure', 'handling', 'time']), words, points: z.number(), of: z.number(), lines: z.array(line) })),
});
