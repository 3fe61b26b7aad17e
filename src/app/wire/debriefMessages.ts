import type { TraceNews } from '../../core/debrief/traceRun.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { SettledState } from '../../core/room/settle.ts';

/** What the page asks of the worker that plays a recording for its debrief; there is one such request for each worker. */
export interface DebriefRequest {
  readonly file: RunFile;
  /** How the scenario's scene comes to rest, when that is known already. */
  readonly settled: SettledState | undefined;
}

/** What the worker says, until `done`. */
export type DebriefReply = { readonly kind: 'news'; readonly news: TraceNews } | { readonly kind: 'done' };
