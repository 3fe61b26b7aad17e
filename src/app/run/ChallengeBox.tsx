import { ANSWER_KEYS } from '../input/keyMap.ts';
import { KeyCap } from '../parts/KeyCap.tsx';
import type { LiveRun } from './LiveRun.ts';
import { openChallenge } from './openChallenge.ts';
import { ANSWER_WORDS } from './words.ts';

/** What the assistant speaks up about, with the two answers, until one is given. */
export function ChallengeBox({ live }: { readonly live: LiveRun }) {
  const open = openChallenge(live);
  return (
    <div class="challenge-place" role="alert">
      {open && (
        <section class="challenge" aria-label="The assistant speaks up">
          <p>Assistant: {open.said.at(-1)!.words}</p>
          <div class="challenge-answers">
            {ANSWER_KEYS.map(({ how, cap }) => (
              <button key={how} class={how === 'stop' ? 'main-button' : undefined} onClick={() => live.hands.order({ type: 'answer', how })}>
                {ANSWER_WORDS[how]} <KeyCap>{cap}</KeyCap>
              </button>
            ))}
          </div>
        </section>
      )}
    </div>
  );
}
