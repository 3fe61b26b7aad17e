import { KeyCap } from '../parts/KeyCap.tsx';
import type { LiveRun } from './LiveRun.ts';
import { NEXT_HEAD } from './NextList.tsx';
import { requestsIn } from './requestsIn.ts';
import { SayField } from './SayField.tsx';
import { shownRequest } from './shownRequest.ts';
import { REQUEST_WORDS } from './words.ts';

/** What the assistant can be asked for, by button, key or words; what is due next is marked under shown coaching. */
export function RequestList({ live }: { readonly live: LiveRun }) {
  const due = shownRequest(live);
  return (
    <section class="panel-part" aria-labelledby="requests-head">
      <h2 id="requests-head">Ask the assistant</h2>
      <div class="two">
        {requestsIn(live.run.scenario).map(({ request, cap }) => (
          <button key={request} class={request === due ? 'keyed request-due' : 'keyed'} aria-describedby={request === due ? NEXT_HEAD : undefined} onClick={() => live.hands.order({ type: 'ask', request })}>
            {REQUEST_WORDS[request]} <KeyCap>{cap}</KeyCap>
          </button>
        ))}
      </div>
      <SayField live={live} />
    </section>
  );
}
