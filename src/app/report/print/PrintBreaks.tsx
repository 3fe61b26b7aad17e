import type { RunResult } from '../../../core/run/result.ts';
import { clockText } from '../../parts/clockText.ts';
import { tellBreak } from '../../parts/tellBreak.ts';
import type { Services } from '../../services.ts';
import { noticedWords, reachWords, remediedWords, secondsAt } from '../reportFacts.ts';
import { PrintTable } from './PrintTable.tsx';

/** Every break in a row: when, what, by which rule, how far it got, and what was done. */
export function PrintBreaks({ result, ruleWords }: { readonly result: RunResult; readonly ruleWords: Services['ruleWords'] }) {
  const { breaks, words } = result;
  if (breaks.length === 0) return <p class="print-none">Breaks of sterility: none.</p>;
  return (
    <PrintTable
      title="Breaks of sterility"
      name="print-breaks"
      columns={['Time', 'What happened', 'Rule', 'Severity, reach', 'Noticed', 'Remedied']}
      rows={breaks}
      most={12}
      keyOf={({ number }) => number}
      cells={(broken) => {
        const rule = ruleWords(broken.rule);
        return [
          clockText(secondsAt(broken.step)),
          tellBreak(rule.sentence, broken, (id) => words[id] ?? id),
          rule.title,
          `${broken.severity}; ${reachWords(broken).replace(/^it reached /, '')}`,
          answerText(noticedWords(broken)),
          answerText(remediedWords(broken)),
        ];
      }}
    />
  );
}

/** Under a heading that asks for it: "no", "after 3 s". */
const answerText = (words: string): string => (words.startsWith('not ') ? 'no' : words.replace(/^(?:noticed|remedied) /, ''));
