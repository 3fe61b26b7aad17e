import { useMemo, useState } from 'preact/hooks';
import { breakGraph } from '../../core/debrief/causeGraph.ts';
import { thingGraph } from '../../core/debrief/thingGraph.ts';
import type { Break, Severity } from '../../core/ledger/break.ts';
import type { Reach } from '../../core/ledger/surface.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import { reachedStep } from './reachedStep.ts';
import { chainLinks, writtenLinks, type ChainLink } from './room/chainLinks.ts';
import type { Debrief } from './useDebrief.ts';

/** The break that the page is about. */
export interface Selection {
  readonly number: number | null;
  readonly broken: Break | null;
  /** It has come about again in what has been played so far. */
  readonly played: boolean;
  readonly count: number;
  /** Its chain; places are known once that part of the run has been played again. */
  readonly links: readonly ChainLink[];
  /** Instant at which the page opens: when the gravest break had reached as far as it got. Null while nothing is known. */
  readonly opensAt: number | null;
  choose(number: number): void;
}

const SEVERITIES: readonly Severity[] = ['minor', 'major', 'critical'];
const REACHES: readonly Reach[] = ['none', 'field', 'device', 'site'];

/** The gravest break first: by severity, then reach, then whether it was remedied, then time. */
export function gravest(breaks: readonly Break[]): Break | null {
  const grave = (known: Break): number => SEVERITIES.indexOf(known.severity) * 100 + REACHES.indexOf(known.reach) * 10 + (known.remediedStep === null ? 1 : 0);
  return [...breaks].sort((a, b) => grave(b) - grave(a) || a.step - b.step)[0] ?? null;
}

export function useSelectedBreak({ result, log }: Debrief, file: RunFile): Selection {
  const [chosen, choose] = useState<number | null>(null);
  const breaks = result?.breaks ?? [];
  const first = useMemo(() => gravest(breaks), [result]);
  const broken = breaks.find(({ number }) => number === (chosen ?? first?.number)) ?? null;
  const again = broken && log?.result.breaks[broken.number - 1];
  const played = broken !== null && again?.rule === broken.rule && again.step === broken.step;
  const links = useMemo(() => {
    if (broken === null) return [];
    if (log && played) return chainLinks(thingGraph(breakGraph(log, broken.number)), log);
    return writtenLinks(broken, result?.words ?? {});
  }, [broken, log, played]);
  const opens = first === null ? (result ? 0 : null) : reachedStep(first);
  return { number: broken?.number ?? null, broken, played, count: breaks.length, links, opensAt: opens === null ? null : Math.min(opens, file.steps), choose };
}
