import { stepsToSeconds } from '../../base/time.ts';
import type { RunResult } from '../../run/result.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { detection, logLinearRate } from '../../statistics/detection.ts';
import { garwood, wilson } from '../../statistics/intervals.ts';
import { medianWaiting } from '../../statistics/survival.ts';
import type { Discrimination, LookAlikeTrial, NoticingOfRun } from './noticing.ts';
import { falseReports, lookAlikeTrials, unsaidUntil } from './trials.ts';

/** How well the operator noticed breaks in a run, from its result and the look-alikes of its scenario. */
export function noticingOfRun(result: RunResult, scenario: Scenario): NoticingOfRun {
  const { breaks } = result;
  const noticed = breaks.filter(({ noticedStep }) => noticedStep !== null);
  const reports = falseReports(result);
  const trials = lookAlikeTrials(result, scenario);
  return {
    sensitivity: wilson(noticed.length, breaks.length),
    remediedUnsaid: breaks.filter(({ noticedStep, remedies }) => noticedStep === null && remedies.length > 0).map(({ number }) => number),
    falseReports: reports,
    falseReportRate: garwood(reports.length, 1),
    timesToNotice: noticed.map(({ number, step, noticedStep }) => ({ break: number, seconds: stepsToSeconds(noticedStep! - step) })),
    medianS: medianWaiting(breaks.map((known) => ({ time: stepsToSeconds(unsaidUntil(known, result.steps) - known.step), seen: known.noticedStep !== null }))),
    trials,
    discrimination: discriminationOf(noticed.length, breaks.length, trials),
  };
}

function discriminationOf(hits: number, breaks: number, trials: readonly LookAlikeTrial[]): Discrimination | null {
  const falseAlarms = trials.filter(({ outcome }) => outcome === 'falseAlarm').length;
  const counted = falseAlarms + trials.filter(({ outcome }) => outcome === 'leftAlone').length;
  if (breaks === 0 || counted === 0) return null;
  const hitRate = logLinearRate(hits, breaks);
  const falseAlarmRate = logLinearRate(falseAlarms, counted);
  return { ...detection(hitRate, falseAlarmRate), hitRate, falseAlarmRate, breaks, trials: counted };
}
