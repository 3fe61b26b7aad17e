import type { RunFile } from '../../core/recording/recording.ts';
import type { Verification } from '../../core/recording/verifyRun.ts';
import type { RunResult } from '../../core/run/result.ts';

/** What the page asks of the worker that plays recordings. */
export interface ReplayRequest {
  readonly task: 'verify' | 'result';
  readonly file: RunFile;
}

/** What the worker says. */
export type ReplayReply =
  | { readonly kind: 'share'; readonly share: number }
  | { readonly kind: 'verified'; readonly verification: Verification }
  | { readonly kind: 'result'; readonly result: RunResult }
  | { readonly kind: 'failed'; readonly message: string };
