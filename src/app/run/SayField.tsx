import { useRef } from 'preact/hooks';
import { KeyCap } from '../parts/KeyCap.tsx';
import type { LiveRun } from './LiveRun.ts';
import { spokenCommand, spokenExamples } from './spokenWords.ts';

/** Id of the field to which Enter leads from the room. */
export const SAY_FIELD = 'say-field';

/** A short line for words to the assistant; after Enter the keys lead the hands again. */
export function SayField({ live }: { readonly live: LiveRun }) {
  const field = useRef<HTMLInputElement>(null);
  const say = (event: Event): void => {
    event.preventDefault();
    const typed = field.current!.value;
    const command = spokenCommand(typed, live.run.scenario);
    field.current!.value = '';
    if (command) live.hands.order(command);
    else if (typed.trim()) live.say(`Not understood. Try: ${spokenExamples(live.run.scenario)}.`);
    document.querySelector<HTMLElement>('.room')?.focus();
  };
  return (
    <form class="say" onSubmit={say}>
      <label>
        In words <KeyCap>Enter</KeyCap>
        <input id={SAY_FIELD} ref={field} type="text" maxLength={60} autocomplete="off" placeholder="let go" />
      </label>
    </form>
  );
}
