import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { Timeline } from '../../core/debrief/timelineTypes.ts';
import type { RunResult } from '../../core/run/result.ts';
import { durationText } from '../parts/clockText.ts';
import { tellBreak } from '../parts/tellBreak.ts';
import { REMEDY_SENTENCES } from '../run/words.ts';

/** The lanes of a run from its written result, before it has been played again: everything but the touches. */
export function writtenTimeline(result: RunResult): Timeline {
  const wordsOf = (id: string): string => result.words[id] ?? id;
  return {
    breaks: result.breaks.map((broken) => ({
      number: broken.number, rule: broken.rule, severity: broken.severity, reach: broken.reach,
      words: tellBreak(broken.against === null ? '{surface}' : '{surface} and {against}', broken, wordsOf),
      fromStep: broken.step, toStep: broken.remediedStep ?? result.steps, open: broken.remediedStep === null,
    })),
    notices: result.notices.map(({ step, breaks }) => {
      const began = result.breaks.filter(({ number }) => breaks.includes(number)).map((broken) => broken.step);
      const lateSteps = began.length === 0 ? null : step - Math.min(...began);
      return { step, breaks, lateSteps, late: false, words: lateSteps === null ? 'nothing was broken' : `after ${durationText(lateSteps / STEPS_PER_SECOND)}` };
    }),
    remedies: result.remedies.map(({ remedy, startStep, endStep, things }) => ({
      remedy, things, fromStep: startStep, toStep: endStep, words: REMEDY_SENTENCES[remedy],
      breaks: result.breaks.filter(({ remedies, remediedStep }) => remedies.includes(remedy) && remediedStep !== null && remediedStep >= endStep).map(({ number }) => number),
    })),
    cues: result.cues,
    tasks: result.progress.tasks.flatMap(({ task, doneStep, critical, outOfOrderAfter }) => (doneStep === null ? [] : [{ task, step: doneStep, critical, outOfOrder: outOfOrderAfter !== null }])),
    touches: [],
  };
}
