import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { RunResult } from '../../core/run/result.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { capital, counted } from '../parts/sentence.ts';

/** The run in a sentence or two: how many breaks, how many noticed in time, and what was left undone. */
export function leadSentence({ breaks, progress }: RunResult, { noticing }: Pick<Scenario, 'noticing'>): string {
  const undone = progress.tasks.filter(({ critical, doneStep }) => critical && doneStep === null).length;
  const tasks = undone > 0 ? ` ${capital(counted(undone, 'critical task'))} not done.` : '';
  if (breaks.length === 0) return `Nothing lost its sterility.${tasks}`;
  const window = noticing.windowS * STEPS_PER_SECOND;
  const inTime = breaks.filter(({ noticedStep, step }) => noticedStep !== null && noticedStep - step <= window).length;
  const open = breaks.filter(({ remediedStep }) => remediedStep === null);
  const site = open.some(({ reach }) => reach === 'site') ? ' The site was not prepared again.' : open.length > 0 ? ` ${open.length === breaks.length ? 'None' : capital(counted(open.length, 'break'))} ${open.length === breaks.length ? 'was' : open.length === 1 ? 'was not' : 'were not'} put right.` : ' All were put right.';
  return `${counted(breaks.length, 'break')}, ${inTime} noticed in time.${site}${tasks}`;
}
