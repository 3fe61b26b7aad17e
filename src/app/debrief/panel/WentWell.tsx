import { lengthText, shareText } from '../../report/reportFacts.ts';
import { momentText } from '../timeText.ts';
import type { DebriefPanelProps } from './DebriefPanel.tsx';
import { PractiseNext } from './PractiseNext.tsx';

const MISSES_MAX = 8;

/** A run without a break: what went well, how near it came to one, what to practise next. */
export function WentWell({ services, file, debrief, onGo, onPractise }: DebriefPanelProps) {
  const { result, nearMisses, log } = debrief;
  if (result === null) return <p>The run is being played again to see what it came to.</p>;
  const done = result.progress.tasks.filter(({ doneStep }) => doneStep !== null).length;
  const nearest = [...nearMisses].sort((a, b) => a.metres - b.metres).slice(0, MISSES_MAX);
  return (
    <>
      <h2 class="panel-title">No break of sterility</h2>
      <ul class="well-list">
        <li>Nothing that must be sterile met anything that was not.</li>
        <li>
          {done} of {result.progress.tasks.length} tasks done{result.progress.tasks.some(({ outOfOrderAfter }) => outOfOrderAfter !== null) ? ', not all in order' : done > 0 ? ', in order' : ''}.
        </li>
        {result.progress.steadyShare !== null && <li>The probe was steady for {shareText(result.progress.steadyShare)} of its time at the site.</li>}
        <li>The drape moved {lengthText(Math.max(result.handling.driftM.left, result.handling.driftM.right))} at the most.</li>
      </ul>
      <section class="debrief-part" aria-labelledby="near-head">
        <h3 id="near-head">Near misses</h3>
        {nearest.length === 0 && <p>{log?.complete ? 'None: hands and sleeves kept more than 3 cm from everything unsterile, or touched nothing by it.' : 'Looked for as the recording is played again.'}</p>}
        <ol class="follow-rows">
          {nearest.map((miss) => (
            <li key={`${miss.step} ${miss.side} ${miss.thing}`}>
              <button class="row-button" onClick={() => onGo(miss.step)}>
                <span class="row-time">{momentText(miss.step)}</span>
                <span>
                  {miss.side} hand or sleeve {lengthText(miss.metres)} from the {miss.words}
                </span>
              </button>
            </li>
          ))}
        </ol>
      </section>
      <PractiseNext services={services} file={file} result={result} onPractise={onPractise} />
    </>
  );
}
