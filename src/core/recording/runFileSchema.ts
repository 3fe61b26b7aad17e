import { z } from 'zod';
import { packedCommandsSchema } from './packedCommands.ts';
import { resultSchema } from './resultSchema.ts';
import { scoreSchema } from './scoreSchema.ts';

export const RUN_FORMAT = 'sterile-field-run';

const hash = z.string().regex(/^[0-9a-f]{16}$/);

const headerSchema = z.strictObject({
  runId: z.string().regex(/^[A-Za-z0-9-]{1,64}$/),
  simulation: z.int().min(1),
  stepsPerSecond: z.int().min(1).max(1000),
  engine: z.string().min(1).max(200),
  startedAt: z.iso.datetime({ offset: true }),
  scenarioHash: hash,
  /** Read by the owner of scenario files, see readRunFile.ts. */
  scenario: z.record(z.string(), z.unknown()),
  seed: z.int().min(0).max(4294967295),
  resumedAt: z.array(z.int().min(0)).max(1000),
});

/** Shape of what the newest version of a run file holds besides its format, version and checksum. */
export const runContentSchema = z.strictObject({
  header: headerSchema,
  steps: z.int().min(0).max(1_073_741_823),
  commands: packedCommandsSchema,
  /** State hashes of 16 digits each, one after the other. */
  hashes: z.string().regex(/^(?:[0-9a-f]{16})*$/),
  result: resultSchema.nullable(),
  score: scoreSchema.nullable().default(null),
});
