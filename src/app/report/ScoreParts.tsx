import type { ScoreLine, ScorePart } from '../../core/scoring/score.ts';
import { EventList } from './EventList.tsx';
import { intervalText, pointsText, valueText } from './scoreWords.ts';

/** The parts of the score; each opens to its numbers, and each number to the events behind it. */
export const ScoreParts = ({ parts }: { readonly parts: readonly ScorePart[] }) => (
  <section class="score-parts" aria-labelledby="parts-head">
    <h2 id="parts-head">What the score is made of</h2>
    {parts.map((part) => (
      <details key={part.id} class="score-part">
        <summary>
          <span class="part-words">{part.words}</span>
          <span class="part-bar" aria-hidden="true">
            <span style={{ width: `${part.of > 0 ? (100 * part.points) / part.of : 0}%` }} />
          </span>
          <span class="part-points">{part.of > 0 ? pointsText(part) : 'not weighed'}</span>
        </summary>
        <ul class="score-lines">
          {part.lines.map((line) => (
            <Line key={line.id} line={line} />
          ))}
        </ul>
      </details>
    ))}
  </section>
);

function Line({ line }: { readonly line: ScoreLine }) {
  const row = (
    <>
      <span class="line-words">
        {line.words}
        {line.interval && <span class="small"> ({intervalText(line)})</span>}
      </span>
      <span class="line-value">{valueText(line)}</span>
      <span class="line-points">{pointsText(line)}</span>
    </>
  );
  return (
    <li>
      {line.events.length === 0 ? (
        <div class="score-line">{row}</div>
      ) : (
        <details>
          <summary class="score-line">{row}</summary>
          <EventList events={line.events} />
        </details>
      )}
    </li>
  );
}
