import { useEffect, useState } from 'preact/hooks';
import { capital, listed } from '../parts/sentence.ts';
import { assistantInWords } from './assistantInWords.ts';
import { holdLines } from './holdLines.ts';
import type { LiveRun } from './LiveRun.ts';

const TWIN_PAUSE_MS = 2500;

/** Says in words what the room shows, for those who do not see it: held things and touches, at most every few seconds. */
export function Announcer({ live }: { readonly live: LiveRun }) {
  const [words, setWords] = useState('');
  useEffect(() => {
    const timer = setInterval(() => live.mode.playing && setWords(`${roomInWords(live)} ${assistantInWords(live.current.assistant)}`), TWIN_PAUSE_MS);
    return () => clearInterval(timer);
  }, [live]);
  return (
    <div class="unseen" role="status">
      {words}
    </div>
  );
}

/** One sentence for each hand, one for the touches, and one for each marked hold. */
export function roomInWords(live: Pick<LiveRun, 'run' | 'coaching' | 'current'>): string {
  const hands = (['right', 'left'] as const).map((side) => {
    const held = live.run.heldWords(side);
    return `${capital(side)} hand: ${held.what}${live.coaching === 'shown' ? `, ${held.state}` : ''}.`;
  });
  const touches = live.run.touchLines().map((line) => line.words);
  const next = holdLines(live).map((line) => `Next, ${line}.`);
  return [...hands, touches.length > 0 ? `Touching: ${listed(touches)}.` : 'Touching nothing.', ...next].join(' ');
}
