import { failure, success, type Result } from '../base/result.ts';
import { crossChecks } from './crossChecks.ts';
import { deepFreeze } from './freeze.ts';
import { jsonPlace } from './jsonPlace.ts';
import { CURRENT_VERSION, MIGRATIONS, migrate } from './migrations.ts';
import { ADVICE, problem, valueText, type Problem } from './problem.ts';
import { scenarioSchema, type Scenario } from './schema.ts';
import { shapeProblems } from './shapeProblems.ts';
import { withStature } from './statures.ts';

/** Why a file cannot be used. `message` is the first problem in one or two sentences, `further` the others. */
export interface ScenarioError extends Problem {
  /** notJson, notAScenario: another file; tooNew: another version; wrongField: one field; inconsistent: fields against each other. */
  readonly kind: 'notJson' | 'notAScenario' | 'tooNew' | 'wrongField' | 'inconsistent';
  readonly further: readonly Problem[];
}

export interface ReadingOptions {
  /** Ids of the rules of the rule book; when given, `rulesOff` may name only these. */
  readonly ruleIds?: readonly string[];
}

/** No sensible scenario comes near this many characters; a larger file is some other file. */
export const CHARACTERS_MAX = 262_144;

/** Reads the text of a scenario file. Never throws for a bad file; the value is frozen and has every default filled in. */
export function parseScenario(text: string, options: ReadingOptions = {}): Result<Scenario, ScenarioError> {
  if (text.length > CHARACTERS_MAX) return fileError('notAScenario', `The file has ${text.length} characters; a scenario has ${CHARACTERS_MAX} at most. Choose a scenario file.`);
  const json = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  const place = jsonPlace(json);
  if (place !== null) return fileError('notJson', `The file is not JSON: line ${place.line}, column ${place.column} should hold ${place.expected}. ${ADVICE}`);
  return readScenario(JSON.parse(json), options);
}

/** Reads a scenario that is already parsed from JSON, for files that carry one inside. */
export function readScenario(source: unknown, options: ReadingOptions = {}): Result<Scenario, ScenarioError> {
  if (typeof source !== 'object' || source === null || Array.isArray(source)) return fileError('notAScenario', `The file holds ${valueText(source)}; a scenario is an object in braces {}. Choose a scenario file.`);
  const header = source as Readonly<Record<string, unknown>>;
  const { format, version } = header;
  if (format !== 'sterile-field-scenario') return headerError('notAScenario', 'format', `format is ${valueText(format)}; allowed is "sterile-field-scenario". Choose a scenario file.`);
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return headerError('notAScenario', 'version', problem('version', valueText(version), `a whole number, at present ${CURRENT_VERSION}`).message);
  if (version > CURRENT_VERSION) return headerError('tooNew', 'version', `version is ${version}; this trainer reads up to ${CURRENT_VERSION}. Open the file with a newer trainer.`);
  return judge(migrate(header, version, MIGRATIONS), options);
}

function judge(source: Readonly<Record<string, unknown>>, options: ReadingOptions): Result<Scenario, ScenarioError> {
  const shape = scenarioSchema.safeParse(source);
  if (!shape.success) return firstOf('wrongField', shapeProblems(source, shape.error.issues));
  const scenario = withStature(shape.data);
  const problems = crossChecks(scenario, options.ruleIds ?? null);
  return problems.length > 0 ? firstOf('inconsistent', problems) : success(deepFreeze(scenario));
}

const firstOf = (kind: ScenarioError['kind'], problems: readonly Problem[]): Result<never, ScenarioError> => failure({ kind, ...problems[0]!, further: problems.slice(1) });
const headerError = (kind: ScenarioError['kind'], path: string, message: string): Result<never, ScenarioError> => failure({ kind, path, message, further: [] });
const fileError = (kind: ScenarioError['kind'], message: string): Result<never, ScenarioError> => headerError(kind, '', message);
