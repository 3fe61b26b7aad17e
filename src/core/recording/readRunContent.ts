import type { z } from 'zod';
import { failure, success, type Result } from '../base/result.ts';
import { readScenario } from '../scenario/parseScenario.ts';
import { scoreOf } from '../scoring/scoreRun.ts';
import { contentHash } from './checksum.ts';
import { unpackCommands } from './packedCommands.ts';
import { hashCount, type RunFile } from './recording.ts';
import type { RunFileError } from './runFileError.ts';
import { runContentSchema } from './runFileSchema.ts';

/** The run that the newest shape of content holds (header, steps, commands, hashes, result), wherever it was kept. Never throws. */
export function readRunContent(content: unknown): Result<RunFile, RunFileError> {
  const read = runContentSchema.safeParse(content);
  return read.success ? assemble(read.data) : failure(shapeError(read.error));
}

function shapeError(error: z.ZodError): RunFileError {
  const issue = error.issues[0]!;
  const path = issue.path.map(String).join('.') || 'the file';
  return { kind: 'wrongShape', path, fault: `is wrong (${issue.message})` };
}

/** The run of a file of the right shape, once its parts agree with each other. */
function assemble(content: z.output<typeof runContentSchema>): Result<RunFile, RunFileError> {
  const { header, steps, result } = content;
  // The hash is of the scenario as it stands in the file: reading may fill in what came later.
  const found = contentHash(header.scenario);
  if (found !== header.scenarioHash) return failure({ kind: 'scenarioChanged', written: header.scenarioHash, found });
  const scenario = readScenario(header.scenario);
  if (!scenario.ok) return failure({ kind: 'wrongShape', path: `header.scenario.${scenario.error.path}`, fault: `is wrong (${scenario.error.message})` });
  const hashes = content.hashes.match(/.{16}/g) ?? [];
  const expected = hashCount(steps, result !== null);
  if (hashes.length !== expected) return failure({ kind: 'wrongShape', path: 'hashes', fault: `holds ${hashes.length} state hashes where ${steps} steps have ${expected}` });
  const commands = unpackCommands(content.commands, steps);
  if (!commands.ok) return failure({ kind: 'wrongShape', ...commands.error });
  // A run from before there were scores gets one if all that its rubric weighs is there.
  const score = result === null ? null : (content.score ?? scoreOf(result, scenario.value));
  // Named as it now stands, so that the run can be written again and read.
  const named = { ...header, scenario: scenario.value, scenarioHash: contentHash(scenario.value) };
  return success({ header: named, steps, commands: commands.value, hashes, result, score });
}
