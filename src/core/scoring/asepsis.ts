import { STEPS_PER_SECOND, stepsToSeconds } from '../base/time.ts';
import type { Break } from '../ledger/break.ts';
import type { CueReport, RunResult } from '../run/result.ts';
import type { Scenario } from '../scenario/schema.ts';
import { garwood } from '../statistics/intervals.ts';
import { medianWaiting } from '../statistics/survival.ts';
import { breakRef, costOf, gradeBreaks, type GradedBreak } from './grading.ts';
import { noticingOfRun } from './noticing/noticingOfRun.ts';
import { clamped, hundredths } from './round.ts';
import type { EventRef, ScoreLine, ScorePart } from './score.ts';
import { REMEDY_DONE } from './words.ts';

/** Steps of ten minutes, the time to which rates refer. */
const TEN_MINUTES = 600 * STEPS_PER_SECOND;

/** How long an interruption is taken to unsettle, in steps; own proposal. */
const WAKE_STEPS = 10 * STEPS_PER_SECOND;

/** What of asepsis a break touches: for choosing what to practise. */
export type BreakPlace = 'hands' | 'cord' | 'drape';
const PLACES: Readonly<Record<BreakPlace, string>> = {
  hands: 'Of these with hands, gown or what they held',
  cord: 'Of these with the cord and its sheath',
  drape: 'Of these with the drape itself',
};

/** Whether it stayed sterile: breaks made, said, put right, and how far they got. `worked` is how far the work went, 0 to 1. */
export function asepsisPart(result: RunResult, scenario: Scenario, worked: number): ScorePart {
  const of = scenario.rubric.points.asepsis;
  const graded = gradeBreaks(result, scenario.rubric);
  const points = hundredths(worked * Math.max(0, of - costOf(graded, scenario.rubric)));
  const lines = [
    { ...told('breaks', 'Breaks of sterility', graded.length, '', refs(graded, result)), points, of },
    ...(result.steps > 0 ? [rateLine(graded, result)] : []),
    ...(graded.length > 0 ? brokenLines(graded, result, scenario) : []),
    reportsLine(result),
  ];
  return { id: 'asepsis', words: 'Keeping it sterile', points, of, lines };
}

const refs = (graded: readonly GradedBreak[], { words }: RunResult): EventRef[] => graded.map((one) => breakRef(one, words));

const told = (id: string, words: string, value: number | null, unit: string, events: readonly EventRef[]): ScoreLine => ({ id, words, value, unit, points: null, of: null, events });

function rateLine(graded: readonly GradedBreak[], result: RunResult): ScoreLine {
  const { rate, low, high } = garwood(graded.length, result.steps / TEN_MINUTES);
  return { ...told('rate', 'Breaks in ten minutes', hundredths(rate), 'per 10 min', refs(graded, result)), interval: [hundredths(low), hundredths(high)] };
}

/** What there is to tell once something broke. */
function brokenLines(graded: readonly GradedBreak[], result: RunResult, scenario: Scenario): ScoreLine[] {
  const { medianS } = noticingOfRun(result, scenario);
  const said = graded.filter((one) => one.said);
  const putRight = graded.filter((one) => one.putRight);
  const far = graded.filter(({ known }) => known.reach === 'device' || known.reach === 'site');
  const all = graded.length;
  return [
    told('said', 'Breaks that you said', said.length, `of ${all}`, noticeRefs(result)),
    told('timeToSay', 'Time until you said it (median)', rounded(medianS), 's', refs(said, result)),
    told('putRight', 'Breaks that were put right', putRight.length, `of ${all}`, remedyRefs(result)),
    told('timeToPutRight', 'Time until it was put right (median)', rounded(medianToPutRight(result)), 's', refs(putRight, result)),
    told('reached', 'Breaks that got to the site, the needle or the probe', far.length, `of ${all}`, refs(far, result)),
    ...(Object.keys(PLACES) as BreakPlace[]).map((place) => {
      const there = graded.filter(({ known }) => placeOf(known) === place);
      return told(`where.${place}`, PLACES[place], there.length, `of ${all}`, refs(there, result));
    }),
    afterCueLine(graded, result),
  ];
}

/** Breaks in the wake of something that happened to the operator, with what it was. */
function afterCueLine(graded: readonly GradedBreak[], { cues, words }: RunResult): ScoreLine {
  const inWake = (cue: CueReport) => graded.filter(({ known }) => known.step >= cue.step && known.step <= cue.step + WAKE_STEPS);
  const count = graded.filter((one) => cues.some((cue) => inWake(cue).includes(one))).length;
  const events = cues.flatMap((cue, k): EventRef[] => {
    const found = inWake(cue);
    return found.length === 0 ? [] : [{ kind: 'cue', step: cue.step, number: k + 1, words: cue.words }, ...found.map((one) => breakRef(one, words))];
  });
  return told('afterCue', 'Of these within ten seconds of an interruption', count, `of ${graded.length}`, events);
}

const rounded = (seconds: number | null): number | null => (seconds === null ? null : hundredths(seconds));

/** With breaks left open as still waiting at the end. */
const medianToPutRight = ({ breaks, steps }: RunResult): number | null =>
  medianWaiting(breaks.map(({ step, remediedStep }) => ({ time: stepsToSeconds((remediedStep ?? steps) - step), seen: remediedStep !== null })));

function placeOf({ rule, surface }: Break): BreakPlace {
  if (/^(cord|tail)-|-on-(bare-cord|sheath-tail)$/.test(rule) || surface.startsWith('sheath')) return 'cord';
  return /^(drape-slid|field-on)-/.test(rule) ? 'drape' : 'hands';
}

const noticeRefs = ({ notices }: RunResult): EventRef[] =>
  notices.map(({ step, breaks }, k) => ({ kind: 'notice', step, number: k + 1, words: breaks.length > 0 ? `“I broke sterility”, for break ${breaks.join(', ')}` : '“I broke sterility”, with nothing broken' }));

export const remedyRefs = ({ remedies }: RunResult): EventRef[] => remedies.map(({ remedy, endStep }, k) => ({ kind: 'remedy', step: endStep, number: k + 1, words: REMEDY_DONE[remedy] }));

function reportsLine(result: RunResult): ScoreLine {
  const events = noticeRefs(result).filter((_, k) => result.notices[k]!.breaks.length === 0);
  return told('falseReports', 'Said with nothing broken; that costs nothing', events.length, '', events);
}

/** How far the work went: 1 once `enoughWork` of the tasks are done. */
export function workedShare({ progress }: RunResult, { rubric }: Scenario): number {
  const done = progress.tasks.filter(({ doneStep }) => doneStep !== null).length;
  if (rubric.enoughWork === 0) return 1;
  return progress.tasks.length === 0 ? 0 : clamped(done / progress.tasks.length / rubric.enoughWork);
}
