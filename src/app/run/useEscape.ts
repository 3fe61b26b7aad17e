import { useEffect, useRef } from 'preact/hooks';

/** Calls back when Escape is pressed anywhere. */
export function useEscape(answer: () => void): void {
  const latest = useRef(answer);
  latest.current = answer;
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.code === 'Escape') latest.current();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
}
