import type { TraceNews } from '../../core/debrief/traceRun.ts';
import type { RunFile } from '../../core/recording/recording.ts';

/** What the page asks of the worker that plays a recording for its debrief; there is one such request for each worker. */
export interface DebriefRequest {
  readonly file: RunFile;
}

/** What the worker says, until `done`. */
export type DebriefReply = { readonly kind: 'news'; readonly news: TraceNews } | { readonly kind: 'done' };
