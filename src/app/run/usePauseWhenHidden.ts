import { useEffect } from 'preact/hooks';
import type { LiveRun } from './LiveRun.ts';

/** Nobody works a field that cannot be seen: a hidden page pauses. */
export function usePauseWhenHidden(live: LiveRun): void {
  useEffect(() => {
    const onChange = (): void => {
      if (document.hidden) live.mode.send({ type: 'pause' });
    };
    document.addEventListener('visibilitychange', onChange);
    return () => document.removeEventListener('visibilitychange', onChange);
  }, [live]);
}
