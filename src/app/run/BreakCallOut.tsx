import type { Break } from '../../core/ledger/break.ts';
import { tellBreak } from '../parts/tellBreak.ts';
import type { RuleWords } from '../services.ts';
import { chainLines } from './breakLines.ts';
import { Swatch } from './Swatch.tsx';

interface BreakCallOutProps {
  readonly broken: Break;
  readonly rule: RuleWords;
  readonly wordsOf: (surface: string) => string;
  readonly nowStep: number;
  readonly onClose: () => void;
}

/** A break as it happens, under shown coaching: what it was and what it has reached so far. */
export function BreakCallOut({ broken, rule, wordsOf, nowStep, onClose }: BreakCallOutProps) {
  const { lines, more } = chainLines(broken, tellBreak(rule.sentence, broken, wordsOf), wordsOf, nowStep);
  return (
    <aside class="call-out" aria-label={`Break ${broken.number}`}>
      <p class="call-out-title">
        <Swatch mark="became" /> Break: {rule.title.charAt(0).toLowerCase() + rule.title.slice(1)}
        <button class="quiet call-out-close" aria-label="Close this message" onClick={onClose}>
          ×
        </button>
      </p>
      <ol class="chain-lines">
        {lines.map((line) => (
          <li key={line.number}>
            <span class="chain-number">{line.number}</span> {line.text}
          </li>
        ))}
      </ol>
      {more > 0 && <p class="small">and {more} more</p>}
    </aside>
  );
}
