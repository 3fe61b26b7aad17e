import { failure, success, type Result } from '../../core/base/result.ts';
import { RULE_BOOK } from '../../core/ledger/rules/ruleBook.ts';
import { readRunFile } from '../../core/recording/readRunFile.ts';
import { runFileErrorWords } from '../../core/recording/runFileError.ts';
import { RUN_FORMAT } from '../../core/recording/runFileSchema.ts';
import { parseScenario } from '../../core/scenario/parseScenario.ts';
import { fileText } from '../../storage/gzip.ts';
import type { OpenedFile } from '../services.ts';

const SCENARIO_FORMAT = 'sterile-field-scenario';

/** Reads a file that a person chose: a run, zipped or not, or a scenario. The error is one or two sentences. */
export async function openFile(file: File): Promise<Result<OpenedFile, string>> {
  if (await isArchive(file)) return failure('This is an archive; import it on the page “My runs”.');
  const text = await fileText(file);
  if (text === null) return failure('The file is damaged or far too large; copy or download it again from where it was saved.');
  if (looksLikeScenario(text, file.name)) {
    const scenario = parseScenario(text, { ruleIds: RULE_BOOK.map(({ id }) => id) });
    if (scenario.ok) return success({ kind: 'scenario', scenario: scenario.value });
    const { message, further } = scenario.error;
    return failure(further.length > 0 ? `${message} ${further.length} more ${further.length === 1 ? 'fault' : 'faults'} in the file.` : message);
  }
  const run = readRunFile(text);
  return run.ok ? success({ kind: 'run', file: run.value }) : failure(runFileErrorWords(run.error));
}

/** A scenario says so in its text, a run before it says so of the scenario inside it; a damaged scenario may still be told by its name. */
const looksLikeScenario = (text: string, name: string): boolean =>
  !text.slice(0, 200).includes(RUN_FORMAT) && (text.slice(0, 4000).includes(SCENARIO_FORMAT) || /scenario/i.test(name));

/** Zip archives begin with "PK". */
const isArchive = async (file: File): Promise<boolean> => (await file.slice(0, 2).text()) === 'PK';
