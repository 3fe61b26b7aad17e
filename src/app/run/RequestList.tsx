import { REQUEST_KEYS } from '../input/keyMap.ts';
import { KeyCap } from '../parts/KeyCap.tsx';
import type { LiveRun } from './LiveRun.ts';
import { SayField } from './SayField.tsx';
import { REQUEST_WORDS } from './words.ts';

/** What the assistant can be asked for, by button, key or words. */
export function RequestList({ live }: { readonly live: LiveRun }) {
  return (
    <section class="panel-part" aria-labelledby="requests-head">
      <h2 id="requests-head">Ask the assistant</h2>
      <div class="two">
        {REQUEST_KEYS.map(({ request, cap }) => (
          <button key={request} class="keyed" onClick={() => live.hands.order({ type: 'ask', request })}>
            {REQUEST_WORDS[request]} <KeyCap>{cap}</KeyCap>
          </button>
        ))}
      </div>
      <SayField live={live} />
    </section>
  );
}
