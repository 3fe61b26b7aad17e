import { useMemo } from 'preact/hooks';
import type { Break } from '../../../core/ledger/break.ts';
import { tellBreak } from '../../parts/tellBreak.ts';
import { reachWords } from '../../report/reportFacts.ts';
import { reachedStep } from '../reachedStep.ts';
import { instantText } from '../timeText.ts';
import { verdictOf } from '../verdictOf.ts';
import { AnswerLines } from './AnswerLines.tsx';
import { ChainList } from './ChainList.tsx';
import type { DebriefPanelProps } from './DebriefPanel.tsx';
import { OwnWhatIf } from './OwnWhatIf.tsx';
import { PractiseNext } from './PractiseNext.tsx';
import { RuleCard } from './RuleCard.tsx';
import { WhatIfList } from './WhatIfList.tsx';

/** One break: what happened, its chain, what was done about it, the rule, what would have saved it, what to practise next. */
export function BreakPanel({ broken, services, file, debrief, selection, whatIf, onGo, onPractise }: DebriefPanelProps & { readonly broken: Break }) {
  const { result, log, head } = debrief;
  const rule = services.ruleWords(broken.rule);
  const words = result?.words ?? {};
  const spared = useMemo(() => whatIf.shown && new Set(whatIf.shown.outcome.spared.map(({ surface }) => surface)), [whatIf.shown]);
  const verdict = result && (verdictOf(result, file.header.scenario)?.verdict ?? null);
  const goToBreak = (number: number): void => {
    const next = result?.breaks.find((one) => one.number === number);
    if (!next) return;
    selection.choose(number);
    onGo(reachedStep(next));
  };
  return (
    <>
      <header class="break-nav">
        <h2>
          Break {broken.number} of {selection.count}
        </h2>
        <span class="stepper">
          <button aria-label="Break before this" disabled={broken.number <= 1} onClick={() => goToBreak(broken.number - 1)}>
            ‹
          </button>
          <button aria-label="Break after this" disabled={broken.number >= selection.count} onClick={() => goToBreak(broken.number + 1)}>
            ›
          </button>
        </span>
        <span class="break-severity">
          {broken.severity}: {reachWords(broken).replace('it ', '')}
        </span>
      </header>
      <p class="panel-title">{rule.title}</p>
      <p class="rule-told">{tellBreak(rule.sentence, broken, (id) => words[id] ?? id)}</p>
      <ChainList links={selection.links} spared={spared} onLink={({ step }) => onGo(step)} />
      <AnswerLines broken={broken} onGo={onGo} />
      <RuleCard id={broken.rule} rule={rule} />
      <section class="debrief-part" aria-label="What if">
        {whatIf.choices === null || !selection.played ? (
          <>
            <h3>What if</h3>
            <p class="small">{log?.complete ? 'Played again here, this break does not come about as it was saved; what-if cannot be told.' : 'Worked out once the recording has been played again as far as this break got.'}</p>
          </>
        ) : (
          <>
            <WhatIfList choices={whatIf.choices} chosen={whatIf.chosen} verdict={verdict} onChoose={whatIf.choose} onDrop={whatIf.drop} />
            {whatIf.soFar !== null && <p class="small">So far: told from the run up to {instantText(whatIf.soFar)}. The whole of it is being played again; then this is worked out anew, with verdicts.</p>}
            {log?.complete && <OwnWhatIf log={log} head={head} whatIf={whatIf} />}
          </>
        )}
      </section>
      <PractiseNext services={services} file={file} result={result} onPractise={onPractise} />
    </>
  );
}
