import type { ScorePart } from '../../../core/scoring/score.ts';
import { pointsText, valueText } from '../scoreWords.ts';

/** Parts of the score with the numbers in them that bring points or are told. */
export const PrintParts = ({ parts }: { readonly parts: readonly ScorePart[] }) => (
  <section>
    <h2>What the score is made of</h2>
    <div class="print-parts">
      {parts.map((part) => (
        <table key={part.id} class="print-table">
          <thead>
            <tr>
              <th scope="col" colSpan={2}>
                {part.words}
              </th>
              <th scope="col">{part.of > 0 ? pointsText(part) : '–'}</th>
            </tr>
          </thead>
          <tbody>
            {part.lines.map((line) => (
              <tr key={line.id}>
                <td>{line.words.replace(/ \(.*\)$/, '')}</td>
                <td>{valueText(line)}</td>
                <td>{pointsText(line)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </div>
  </section>
);
