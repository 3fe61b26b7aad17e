import type { LiveRun } from './LiveRun.ts';
import { requestsIn } from './requestsIn.ts';
import { shownRequest } from './shownRequest.ts';
import { REQUEST_WORDS } from './words.ts';

/** A marked request in words, with what is on its key. */
export interface AskLine {
  readonly words: string;
  readonly cap: string;
}

/** The request whose button is marked, in words: "Ask: tie the back", and its key. Null while none is marked. */
export function askLine(live: Pick<LiveRun, 'run' | 'coaching' | 'current'>): AskLine | null {
  const due = shownRequest(live);
  const key = requestsIn(live.run.scenario).find(({ request }) => request === due);
  if (!key) return null;
  const name = REQUEST_WORDS[key.request];
  return { words: `Ask: ${name.charAt(0).toLowerCase()}${name.slice(1)}`, cap: key.cap };
}
