import type { RunResult } from '../../../core/run/result.ts';
import { clockText } from '../../parts/clockText.ts';
import { tellBreak } from '../../parts/tellBreak.ts';
import type { Services } from '../../services.ts';
import { noticedWords, reachWords, remediedWords, secondsAt } from '../reportFacts.ts';

/** Breaks that two pages have room for. */
const PRINTED = 12;

/** Every break in a row: when, what, by which rule, how far it got, and what was done. */
export function PrintBreaks({ result, ruleWords }: { readonly result: RunResult; readonly ruleWords: Services['ruleWords'] }) {
  const { breaks, words } = result;
  if (breaks.length === 0) return <p class="print-none">Breaks of sterility: none.</p>;
  return (
    <section>
      <h2>Breaks of sterility ({breaks.length})</h2>
      <table class="print-table print-breaks">
        <thead>
          <tr>
            {['Time', 'What happened', 'Rule', 'Severity, reach', 'Noticed', 'Remedied'].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {breaks.slice(0, PRINTED).map((broken) => {
            const rule = ruleWords(broken.rule);
            return (
              <tr key={broken.number}>
                <td>{clockText(secondsAt(broken.step))}</td>
                <td>{tellBreak(rule.sentence, broken, (id) => words[id] ?? id)}</td>
                <td>{rule.title}</td>
                <td>
                  {broken.severity}; {reachWords(broken).replace(/^it reached /, '')}
                </td>
                <td>{answerText(noticedWords(broken))}</td>
                <td>{answerText(remediedWords(broken))}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {breaks.length > PRINTED && <p>And {breaks.length - PRINTED} more, which the report on screen and the run file have.</p>}
    </section>
  );
}

/** Under a heading that asks for it: "no", "after 3 s". */
const answerText = (words: string): string => (words.startsWith('not ') ? 'no' : words.replace(/^(?:noticed|remedied) /, ''));
