import { STEPS_PER_SECOND } from '../base/time.ts';
import { breakWords } from '../ledger/breakWords.ts';
import { indexOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';
import { listed, wholeOf } from './surfaceWords.ts';
import type { BreakSpan, NoticeMark, RemedySpan, TaskMark, Timeline } from './timelineTypes.ts';

/** Everything that happened, lane by lane. */
export function timeline(log: RunLog): Timeline {
  return {
    breaks: breakSpans(log),
    notices: noticeMarks(log),
    remedies: remedySpans(log),
    cues: log.result.cues,
    tasks: taskMarks(log),
    touches: indexOf(log).touches,
  };
}

const lastStep = (log: RunLog): number => Math.max(0, log.steps - 1);

function breakSpans(log: RunLog): BreakSpan[] {
  const { ledger, surfaces } = indexOf(log);
  const words = Object.fromEntries([...surfaces].map(([id, surface]) => [id, surface.words]));
  return ledger.breaks.map((known) => ({
    number: known.number,
    rule: known.rule,
    words: breakWords(known, words),
    severity: known.severity,
    reach: known.reach,
    fromStep: known.step,
    toStep: known.remediedStep ?? lastStep(log),
    open: known.remediedStep === null,
  }));
}

function noticeMarks(log: RunLog): NoticeMark[] {
  const { ledger } = indexOf(log);
  const patience = log.scenario.noticing.windowS * STEPS_PER_SECOND;
  return ledger.notices.map(({ step, breaks }) => {
    if (breaks.length === 0) return { step, breaks, lateSteps: null, words: 'nothing was broken', late: false };
    const lateSteps = step - Math.min(...breaks.map((number) => ledger.breaks[number - 1]!.step));
    const late = lateSteps > patience;
    const seconds = Math.round(lateSteps / STEPS_PER_SECOND);
    return { step, breaks, lateSteps, words: late ? `${seconds} s late` : `after ${seconds} s`, late };
  });
}

function remedySpans(log: RunLog): RemedySpan[] {
  const { ledger, surfaces, retired } = indexOf(log);
  return log.result.remedies.map(({ remedy, things, startStep, endStep }) => {
    const parts = [...surfaces.values()].filter(({ thing, role }) => things.includes(thing) && role !== 'none');
    const taken = new Set(parts.filter(({ id }) => retired.get(id) === endStep).map(({ id }) => id));
    const answers = ({ spread, remedies, remediedStep }: (typeof ledger.breaks)[number]): boolean =>
      remedies.includes(remedy) && (spread.some(({ surface }) => taken.has(surface)) || (spread.length === 0 && remediedStep === endStep));
    const words = listed(parts.map((surface) => wholeOf(surface).words));
    return { remedy, things, words, fromStep: startStep, toStep: endStep, breaks: ledger.breaks.filter(answers).map(({ number }) => number) };
  });
}

function taskMarks(log: RunLog): TaskMark[] {
  return log.result.progress.tasks
    .flatMap(({ task, doneStep, critical, outOfOrderAfter }) => (doneStep === null ? [] : [{ task, step: doneStep, critical, outOfOrder: outOfOrderAfter !== null }]))
    .sort((p, q) => p.step - q.step);
}

