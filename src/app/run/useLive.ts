import { useEffect, useReducer } from 'preact/hooks';
import type { LiveRun } from './LiveRun.ts';

/** Draws a panel anew whenever the run publishes. */
export function useLive(live: LiveRun): void {
  const [, again] = useReducer<number, undefined>((count) => count + 1, 0);
  useEffect(() => live.subscribe(() => again(undefined)), [live]);
}
