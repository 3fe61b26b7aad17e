import { REQUEST_KEYS } from '../input/keyMap.ts';
import { KeyCap } from '../parts/KeyCap.tsx';
import type { RequestId } from '../../core/commands/command.ts';
import { REQUEST_WORDS } from './words.ts';

/** What the assistant can be asked for. */
export function RequestList({ onAsk }: { readonly onAsk: (request: RequestId) => void }) {
  return (
    <section class="panel-part" aria-labelledby="requests-head">
      <h2 id="requests-head">Ask the assistant</h2>
      <div class="two">
        {REQUEST_KEYS.map((request, k) => (
          <button key={request} class="keyed" onClick={() => onAsk(request)}>
            {REQUEST_WORDS[request]} <KeyCap>{String(k + 7)}</KeyCap>
          </button>
        ))}
      </div>
    </section>
  );
}
