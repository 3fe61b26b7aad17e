import { useState } from 'preact/hooks';
import { indexOf } from '../../../core/debrief/logIndex.ts';
import { remedyFor, type RemedyChoice } from '../../../core/debrief/remedyFor.ts';
import type { RunLog } from '../../../core/debrief/runLog.ts';
import { STEPS_PER_SECOND } from '../../../core/base/time.ts';
import { roughWords } from '../roughWords.ts';
import type { PlayHead } from '../PlayHead.ts';
import { instantText, momentText } from '../timeText.ts';
import { usePlayHead } from '../usePlayHead.ts';
import type { WhatIf } from '../useWhatIf.ts';

/** Touches so near to the instant are offered, in seconds, and so many of them. */
const NEAR_S = 3;
const TOUCHES_MAX = 30;

interface OwnWhatIfProps {
  readonly log: RunLog;
  readonly head: PlayHead;
  readonly whatIf: WhatIf;
}

/** The person's own what-if at the instant that is shown: without one of the touches there, or with a remedy done by then. */
export function OwnWhatIf({ log, head, whatIf }: OwnWhatIfProps) {
  const [open, setOpen] = useState(false);
  return (
    <details class="own-what-if" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Another touch undone, or another remedy</summary>
      {open && <OwnForm log={log} head={head} whatIf={whatIf} />}
    </details>
  );
}

function OwnForm({ log, head, whatIf }: OwnWhatIfProps) {
  const step = usePlayHead(head, (now) => (now.playing ? Math.floor(now.step / STEPS_PER_SECOND) * STEPS_PER_SECOND : Math.floor(now.step)));
  const touches = touchesNear(log, step);
  const remedies = remediesAt(log, step);
  const [touch, setTouch] = useState('');
  const [remedy, setRemedy] = useState('');
  const chosenTouch = touches.find((one) => String(one.touch) === touch) ?? touches[0];
  const chosenRemedy = remedies.find(({ things }) => things.join() === remedy) ?? remedies[0];
  return (
    <div class="own-form">
      <p class="small">At {instantText(step)}; move along the timeline for another instant.</p>
      {chosenTouch ? (
        <div class="own-row">
          <label>
            Without this touch
            <select value={String(chosenTouch.touch)} onChange={(event) => setTouch(event.currentTarget.value)}>
              {touches.map((one) => (
                <option key={one.touch} value={String(one.touch)}>
                  {momentText(one.fromStep)} {one.words}
                  {one.spoils ? ' (carried it on)' : ''}
                </option>
              ))}
            </select>
          </label>
          <button onClick={() => whatIf.addTouch(chosenTouch.touch, `${chosenTouch.words}, ${momentText(chosenTouch.fromStep)}`)}>Try</button>
        </div>
      ) : (
        <p class="small">No touch of a hand or arm within {NEAR_S} s.</p>
      )}
      {chosenRemedy && (
        <div class="own-row">
          <label>
            This done by then
            <select value={chosenRemedy.things.join()} onChange={(event) => setRemedy(event.currentTarget.value)}>
              {remedies.map(({ things, words }) => (
                <option key={things.join()} value={things.join()}>
                  {words}
                </option>
              ))}
            </select>
          </label>
          <button onClick={() => whatIf.addRemedy(chosenRemedy, step)}>Try</button>
        </div>
      )}
    </div>
  );
}

/** Touches under way near an instant, those that carried something on first, then the nearest in time. */
function touchesNear(log: RunLog, step: number) {
  const { touches, surfaces } = indexOf(log);
  const near = NEAR_S * STEPS_PER_SECOND;
  const words = (id: string): string => roughWords(surfaces.get(id)?.words ?? id);
  return touches
    .filter(({ side, spoils, fromStep, toStep }) => (side !== null || spoils) && fromStep <= step + near && toStep >= step - near)
    .sort((a, b) => Number(b.spoils) - Number(a.spoils) || Math.abs(a.fromStep - step) - Math.abs(b.fromStep - step))
    .slice(0, TOUCHES_MAX)
    .map(({ touch, a, b, fromStep, spoils }) => ({ touch, fromStep, spoils, words: `${words(a)} and ${words(b)}` }));
}

/** Remedies for what is in the room at an instant, what is unsterile by then first. */
function remediesAt(log: RunLog, step: number): RemedyChoice[] {
  const { surfaces, history, retired } = indexOf(log);
  const found = new Map<string, { readonly choice: RemedyChoice; readonly spoiled: boolean }>();
  for (const surface of surfaces.values()) {
    const mark = history.markAt(surface.id, step);
    if (surface.role === 'none' || mark === undefined || (retired.get(surface.id) ?? Infinity) <= step) continue;
    const spoiled = mark === 'became';
    const choice = found.get(surface.thing)?.spoiled || (found.has(surface.thing) && !spoiled) ? null : remedyFor(log, surface, step);
    if (choice) found.set(surface.thing, { choice, spoiled });
  }
  const choices = [...found.values()].sort((a, b) => Number(b.spoiled) - Number(a.spoiled)).map(({ choice }) => choice);
  return [...new Map(choices.map((choice) => [choice.things.join(), choice])).values()];
}
