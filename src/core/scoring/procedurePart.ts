import type { TaskReport } from '../procedure/observation.ts';
import type { RunResult } from '../run/result.ts';
import type { Scenario } from '../scenario/schema.ts';
import { clamped, hundredths } from './round.ts';
import type { EventRef, ScoreLine, ScorePart } from './score.ts';
import { capital, ITEM_NAMES, TASK_NAMES } from './words.ts';

/** A line before weights become points: the share of its weight that was earned. */
interface Earned {
  readonly line: Omit<ScoreLine, 'points' | 'of'>;
  readonly weight: number;
  readonly share: number;
}

/** Whether the work was done: each task, its order, a steady probe, sharps where they belong. */
export function procedurePart(result: RunResult, scenario: Scenario): ScorePart {
  const { tasks } = result.progress;
  // A run that never comes to the field has neither a view to hold nor a needle to throw away.
  const ofField = tasks.some(({ task }) => task === 'view') ? [steadiness(result, scenario), sharps(result, scenario)] : [];
  const earned = [...tasks.map((task) => taskEarned(task, scenario)), ...ofField];
  return weighed('procedure', 'The work itself', scenario.rubric.points.procedure, earned);
}

/** Tasks without which a run is not met. */
export const isCriticalTask = ({ task, critical }: TaskReport, { rubric }: Scenario): boolean => critical || rubric.alsoCritical.some((also) => also === task);

function taskEarned(report: TaskReport, scenario: Scenario): Earned {
  const { tasks } = scenario.rubric;
  const { task, doneStep, outOfOrderAfter } = report;
  const early = outOfOrderAfter === null ? '' : `, before ${TASK_NAMES[outOfOrderAfter]}`;
  const line = { id: `task.${task}`, words: capital(TASK_NAMES[task]), value: doneStep === null ? 0 : 1, unit: 'done', events: taskRefs([report]) };
  const share = doneStep === null ? 0 : outOfOrderAfter === null ? 1 : tasks.outOfOrder;
  return { line: { ...line, words: `${line.words}${early}` }, weight: isCriticalTask(report, scenario) ? tasks.critical : tasks.other, share };
}

/** Done tasks as events. */
export const taskRefs = (reports: readonly TaskReport[]): EventRef[] =>
  reports.flatMap(({ task, doneStep, outOfOrderAfter }): EventRef[] =>
    doneStep === null ? [] : [{ kind: 'task', step: doneStep, words: `${TASK_NAMES[task]}${outOfOrderAfter === null ? '' : `, out of order: ${TASK_NAMES[outOfOrderAfter]} comes first`}` }],
  );

function steadiness({ progress }: RunResult, { rubric: { tasks } }: Scenario): Earned {
  const { steadyShare } = progress;
  const value = steadyShare === null ? null : Math.round(steadyShare * 100);
  const events = taskRefs(progress.tasks.filter(({ task }) => task === 'view'));
  return { line: { id: 'steadiness', words: 'Probe steady while at the site', value, unit: '%', events }, weight: tasks.steadiness, share: clamped((steadyShare ?? 0) / tasks.steadyShare) };
}

/** Needles in the rubbish bin. Keeping them out earns something only once one was used. */
function sharps({ progress }: RunResult, { items, rubric: { tasks } }: Scenario): Earned {
  const names = progress.sharpsBinned.map((id) => ITEM_NAMES[items.find((item) => item.id === id)?.kind ?? 'needleSyringe']);
  const withNeedle = progress.tasks.filter(({ task, doneStep }) => (task === 'anaesthetic' || task === 'ready') && doneStep !== null);
  const used = withNeedle.length > 0;
  const fine = used ? 'No needle in the rubbish bin' : 'No needle used yet';
  const words = names.length === 0 ? fine : `In the rubbish bin, where no needle belongs: ${names.join(', ')}`;
  return { line: { id: 'sharps', words, value: names.length, unit: '', events: taskRefs(withNeedle) }, weight: tasks.sharps, share: names.length === 0 && used ? 1 : 0 };
}

/** A part of `of` points shared out by weights. */
export function weighed(id: ScorePart['id'], words: string, of: number, earned: readonly Earned[], worked = 1): ScorePart {
  const all = earned.reduce((sum, { weight }) => sum + weight, 0);
  const worth = (weight: number): number => (all > 0 ? (of * weight) / all : 0);
  const lines = earned.map(({ line, weight, share }): ScoreLine =>
    weight > 0 ? { ...line, points: hundredths(worth(weight) * share * worked), of: hundredths(worth(weight)) } : { ...line, points: null, of: null },
  );
  // Rounded once: the rounded points of the lines may miss the part's by a hundredth or two.
  const points = earned.reduce((sum, { weight, share }) => sum + worth(weight) * share * worked, 0);
  return { id, words, points: hundredths(points), of: all > 0 ? of : 0, lines };
}

export type { Earned };
