import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { alternatives, remedyBy } from '../../core/debrief/alternatives.ts';
import { outcomeWords } from '../../core/debrief/outcomeWords.ts';
import type { RemedyChoice } from '../../core/debrief/remedyFor.ts';
import type { RunLog } from '../../core/debrief/runLog.ts';
import { suggestion } from '../../core/debrief/suggestion.ts';
import { whatIf } from '../../core/debrief/whatIf.ts';
import type { Alternative } from '../../core/debrief/whatIfTypes.ts';
import type { Break } from '../../core/ledger/break.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { logForWhatIf } from './logForWhatIf.ts';
import type { Choice } from './panel/WhatIfList.tsx';
import { verdictOf } from './verdictOf.ts';

/** The what-ifs of the page: suggested ones for the break that is shown, and the person's own. */
export interface WhatIf {
  /** Null until the part of the run that the break concerns has been played again. */
  readonly choices: readonly Choice[] | null;
  /** Steps that they were worked out on while the rest is still being played; null once it is the whole run. */
  readonly soFar: number | null;
  readonly chosen: string | null;
  /** What is shown in the room instead of the run as it was. */
  readonly shown: Alternative | null;
  choose(key: string | null): void;
  addTouch(touch: number, words: string): void;
  addRemedy(choice: RemedyChoice, step: number): void;
  drop(key: string): void;
}

const keyOf = ({ change }: Alternative): string => JSON.stringify(change);

/** @param broken the break that is shown, once it has come about again */
export function useWhatIf(log: RunLog | null, broken: Break | null, scenario: Scenario): WhatIf {
  const number = broken?.number ?? null;
  const complete = log?.complete ? log : null;
  const held = useRef<RunLog | null>(null);
  held.current = logForWhatIf(log, broken, held.current);
  const partly = held.current !== null && !held.current.complete;
  const suggested = useSuggested(held.current, number);
  const [own, setOwn] = useState<readonly Alternative[]>([]);
  const [chosen, choose] = useState<string | null>(null);
  useEffect(() => choose(null), [number]);
  const choices = useMemo(() => {
    if (suggested === null) return null;
    const seen = new Set<string>();
    const told = (alternative: Alternative, isOwn: boolean): Choice[] => {
      const key = keyOf(alternative);
      if (seen.has(key)) return [];
      seen.add(key);
      return [{ key, alternative, verdict: partly ? null : verdictOf(alternative.outcome.result, scenario), own: isOwn }];
    };
    return [...suggested.flatMap((alternative) => told(alternative, false)), ...own.flatMap((alternative) => told(alternative, true))];
  }, [suggested, own, scenario, partly]);
  const add = (alternative: Alternative): void => {
    setOwn((before) => [...before.filter((one) => keyOf(one) !== keyOf(alternative)), alternative]);
    choose(keyOf(alternative));
  };
  return {
    choices, chosen, choose,
    soFar: partly ? held.current!.steps : null,
    shown: choices?.find(({ key }) => key === chosen)?.alternative ?? null,
    addTouch: (touch, words) => {
      if (!complete) return;
      const outcome = whatIf(complete, { kind: 'undoTouch', touch });
      add({ change: outcome.change, title: `Without this touch: ${words}.`, sentence: outcomeWords(outcome), outcome });
    },
    addRemedy: (choice, step) => {
      if (complete) add(remedyBy(complete, choice, step));
    },
    drop: (key) => {
      setOwn((before) => before.filter((one) => keyOf(one) !== key));
      if (chosen === key) choose(null);
    },
  };
}

/** Worked out after the page has been drawn, because a long run takes a moment. The one that would have kept device and site clean comes first. */
function useSuggested(log: RunLog | null, number: number | null): readonly Alternative[] | null {
  const [found, setFound] = useState<{ readonly log: RunLog; readonly number: number | null; readonly list: readonly Alternative[] } | null>(null);
  useEffect(() => {
    if (log === null) return;
    const timer = setTimeout(() => {
      const best = number === null ? null : suggestion(log);
      const list = number === null ? [] : alternatives(log, number);
      const fits = best !== null && log.result.breaks[number! - 1]?.spread.some(({ surface }) => best.outcome.spared.some((one) => one.surface === surface));
      setFound({ log, number, list: fits ? [best, ...list] : list });
    }, 30);
    return () => clearTimeout(timer);
  }, [log, number]);
  return found !== null && found.log === log && found.number === number ? found.list : null;
}
