import type { Break } from '../../core/ledger/break.ts';
import { clockText } from '../parts/clockText.ts';
import { tellBreak } from '../parts/tellBreak.ts';
import type { RuleWords } from '../services.ts';
import { chainRows, noticedWords, reachWords, remediedWords, secondsAt } from './reportFacts.ts';

interface BreakCardProps {
  readonly broken: Break;
  readonly rule: RuleWords;
  readonly words: Readonly<Record<string, string>>;
  readonly onRule: (rule: string) => void;
}

/** One break: what happened and when, the chain it set off, what the operator did, and the rule with its source. */
export function BreakCard({ broken, rule, words, onRule }: BreakCardProps) {
  return (
    <article class="break-card" aria-labelledby={`break-${broken.number}`}>
      <header class="break-head">
        <span class="break-time">{clockText(secondsAt(broken.step))}</span>
        <h3 id={`break-${broken.number}`} tabIndex={-1}>{rule.title}</h3>
        <span class="break-severity">
          {broken.severity}: {reachWords(broken)}
        </span>
      </header>
      <div class="break-body">
        <ol class="chain">
          {chainRows(broken, words).map((row) => (
            <li key={row.number}>
              <span class={row.number === 1 ? 'chain-badge chain-root' : 'chain-badge'}>{row.number}</span>
              <span class="chain-time">{clockText(secondsAt(row.step))}</span>
              <span class="chain-surface">{row.surface}</span>
              <span class="chain-how">{row.how}</span>
            </li>
          ))}
        </ol>
        <div class="break-rule">
          <p class="rule-told">{tellBreak(rule.sentence, broken, (id) => words[id] ?? id)}</p>
          <p class="rule-statement">{rule.statement}</p>
          <p class="small">Source: {rule.source}</p>
          <button class="quiet rule-more" onClick={() => onRule(broken.rule)}>
            Read it in the rule book
          </button>
        </div>
      </div>
      <footer class="break-answer">
        <span class={broken.noticedStep === null ? 'broken-words' : undefined}>{noticedWords(broken)}</span>
        <span class={broken.remediedStep === null ? 'broken-words' : undefined}>{remediedWords(broken)}</span>
      </footer>
    </article>
  );
}
