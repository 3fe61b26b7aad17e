import { useRef } from 'preact/hooks';
import { RULE_GROUPS } from '../../core/ledger/rules/ruleBook.ts';
import type { Rule } from '../../core/ledger/rules/rule.ts';

interface RuleListProps {
  readonly rules: readonly Rule[];
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
}

const STRIDES: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1, Home: -Infinity, End: Infinity };

/** Titles of the rules by group. One of them takes the focus; arrow keys, Home and End go on from it. */
export function RuleList({ rules, chosen, onChoose }: RuleListProps) {
  const list = useRef<HTMLElement>(null);
  const onKeyDown = (event: KeyboardEvent): void => {
    const stride = STRIDES[event.key];
    if (stride === undefined) return;
    event.preventDefault();
    const k = rules.findIndex(({ id }) => id === chosen);
    const next = rules[Math.min(Math.max(k + stride, 0), rules.length - 1)];
    if (!next) return;
    onChoose(next.id);
    list.current!.querySelector<HTMLElement>(`[data-rule="${next.id}"]`)?.focus();
  };
  return (
    <nav class="rule-list" aria-label="Rules" ref={list} onKeyDown={onKeyDown}>
      {RULE_GROUPS.map((group) => ({ words: group.words, rules: group.rules.filter((rule) => rules.includes(rule)) }))
        .filter((group) => group.rules.length > 0)
        .map((group) => (
          <section key={group.words}>
            <h2>{group.words}</h2>
            <ul>
              {group.rules.map(({ id, title, severity }) => (
                <li key={id}>
                  <button class="rule-line" data-rule={id} tabIndex={id === chosen ? 0 : -1} aria-current={id === chosen ? 'true' : undefined} onClick={() => onChoose(id)}>
                    <span>{title}</span>
                    <span class="rule-line-severity">{severity}</span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
        ))}
    </nav>
  );
}
