import { useEffect, useState } from 'preact/hooks';
import { capital, listed } from '../parts/sentence.ts';
import { askLine } from './askLine.ts';
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

/** One sentence for each hand, one for the touches, one for each marked hold, and one for a marked request with its key. */
export function roomInWords(live: Pick<LiveRun, 'run' | 'coaching' | 'current'>): string {
  const hands = (['right', 'left'] as const).map((side) => {
    const held = live.run.heldWords(side);
    return `${capital(side)} hand: ${held.what}${live.coaching === 'shown' ? `, ${held.state}` : ''}.`;
  });
  const touches = live.run.touchLines().map((line) => line.words);
  const ask = askLine(live);
  const next = [...holdLines(live), ...(ask ? [`${ask.words.toLowerCase()}, key ${ask.cap}`] : [])].map((line) => `Next, ${line}.`);
  return [...hands, touches.length > 0 ? `Touching: ${listed(touches)}.` : 'Touching nothing.', ...next].join(' ');
}
