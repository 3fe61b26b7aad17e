import type { RunResult } from '../run/result.ts';
import type { Scenario } from '../scenario/schema.ts';
import { breakRef, gradeBreaks, type GradedBreak } from './grading.ts';
import { isCriticalTask, taskRefs } from './procedurePart.ts';
import type { VerdictReason } from './score.ts';
import { timingOf } from './timePart.ts';
import { counted, listed, minutesText, TASK_NAMES } from './words.ts';

/** The conditions of the verdict, each in one sentence. None makes up for another. */
export function reasonsOf(result: RunResult, scenario: Scenario, total: number): VerdictReason[] {
  const graded = gradeBreaks(result, scenario.rubric);
  const refs = (some: readonly GradedBreak[]) => some.map((one) => breakRef(one, result.words));
  const reason = (id: VerdictReason['id'], faults: readonly GradedBreak[], fine: string, wrong: string): VerdictReason => ({
    id, holds: faults.length === 0, words: faults.length === 0 ? fine : wrong, events: refs(faults),
  });
  const { fails } = scenario.rubric;
  const open = graded.filter(({ grade, putRight }) => grade === 'critical' && !putRight);
  const used = fails.usedUnsterile ? graded.filter((one) => one.used) : [];
  return [
    reason('criticalBreaks', open, 'No critical break was left open.', `${counted(open.length, 'critical break was', 'critical breaks were')} left open.`),
    reason('usedUnsterile', used, 'Nothing that had lost its sterility was used on the patient.', 'Something that had lost its sterility was used on the patient. Nothing done later takes that back.'),
    majorReason(graded, scenario, refs),
    taskReason(result, scenario),
    standardReason(total, scenario),
    timeReason(result, scenario),
  ];
}

function majorReason(graded: readonly GradedBreak[], { rubric: { fails } }: Scenario, refs: (some: readonly GradedBreak[]) => VerdictReason['events']): VerdictReason {
  const majors = graded.filter(({ grade }) => grade === 'major');
  const open = fails.majorLeft ? majors.filter(({ putRight }) => !putRight) : [];
  const righted = majors.filter(({ putRight }) => putRight);
  const many = righted.length > fails.majorsPutRight;
  const words =
    open.length > 0
      ? `${counted(open.length, 'major break was', 'major breaks were')} left open.`
      : many
        ? `${counted(righted.length, 'major break')} had to be put right; ${fails.majorsPutRight === 0 ? 'none' : `no more than ${fails.majorsPutRight}`} is allowed.`
        : righted.length > 0
          ? `${counted(righted.length, 'major break was', 'major breaks were')} put right, which is allowed.`
          : 'No major break was left open.';
  return { id: 'majorBreaks', holds: open.length === 0 && !many, words, events: refs(open.length > 0 ? open : righted) };
}

function taskReason({ progress }: RunResult, scenario: Scenario): VerdictReason {
  const critical = progress.tasks.filter((task) => isCriticalTask(task, scenario));
  const missing = critical.filter(({ doneStep }) => doneStep === null);
  const words = missing.length === 0 ? 'Every critical step was done.' : `Not done, and nothing makes up for it: ${listed(missing.map(({ task }) => TASK_NAMES[task]))}.`;
  return { id: 'criticalTasks', holds: missing.length === 0, words, events: taskRefs(critical) };
}

function standardReason(total: number, { rubric: { standard } }: Scenario): VerdictReason {
  const holds = total >= standard;
  return { id: 'standard', holds, words: `${total} of 100 points; the standard is ${standard}.`, events: [] };
}

function timeReason(result: RunResult, scenario: Scenario): VerdictReason {
  const { workS, limitS, over } = timingOf(result, scenario);
  const fails = over && scenario.rubric.fails.overTime;
  const times = `${minutesText(workS)} of work, ${minutesText(limitS)} foreseen`;
  return { id: 'time', holds: !fails, words: !over ? `Within the time: ${times}.` : fails ? `Over the time: ${times}.` : `Over the time: ${times}. It is noted, no more.`, events: [] };
}
