import { useEffect, useReducer, useRef } from 'preact/hooks';
import type { PlayHead } from './PlayHead.ts';

/**
 * Draws the component again when what `look` gives of the instant has changed, and gives that. Parts of the page that show little of
 * the instant are thereby drawn seldom.
 */
export function usePlayHead<T extends string | number | boolean>(head: PlayHead, look: (head: PlayHead) => T): T {
  const [, again] = useReducer((count: number) => count + 1, 0);
  const latest = useRef(look);
  latest.current = look;
  const seen = look(head);
  const shown = useRef(seen);
  shown.current = seen;
  useEffect(
    () =>
      head.subscribe(() => {
        if (latest.current(head) !== shown.current) again(undefined);
      }),
    [head],
  );
  return seen;
}
