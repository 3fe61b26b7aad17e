import { SIDES } from '../../core/base/side.ts';
import { askLine } from './askLine.ts';
import { heldLook } from './heldLook.ts';
import { holdLines } from './holdLines.ts';
import { openChallenge } from './openChallenge.ts';
import type { LiveRun } from './LiveRun.ts';

/**
 * All that the panels show of a run that goes on by itself, as one text: while it stays the same nothing need be drawn anew. Whole
 * seconds are in it, so that what is shown for a time goes when its time is over.
 */
export function panelFace(live: LiveRun): string {
  const { run, coaching, hands, current } = live;
  const { progress, remedy } = run;
  const sides = SIDES.map((side) => {
    const held = run.heldWords(side);
    const arm = current.gown?.arms[side];
    const dress = arm ? `${arm.glove} ${arm.inM > 0} ${arm.toCuffM < 0}` : '';
    return `${held.what}, ${held.state}, ${heldLook(current, side)}, ${hands.isClosed(side)} ${dress}`;
  });
  const touches = run.touchLines().map(({ words, spoils }) => `${words} ${spoils}`);
  const tasks = progress.tasks.filter(({ doneStep }) => doneStep !== null).length;
  const under = remedy && `${remedy.phase} ${remedy.progress}`;
  return [Math.floor(live.seconds), ...sides, ...touches, progress.current, tasks, progress.hint, ...holdLines(live), askLine(live)?.words, under, coaching === 'shown' && breaksFace(live), openChallenge(live)?.said.length, live.keptNotice].join('\n');
}

/** Breaks grow and are answered; the place of the newest moves with the view. */
function breaksFace({ run, newBreak }: LiveRun): string {
  const breaks = run.breaks.map(({ spread, noticedStep, remediedStep }) => `${spread.length} ${noticedStep} ${remediedStep}`).join();
  return newBreak ? `${breaks} ${run.stepCount}` : breaks;
}
