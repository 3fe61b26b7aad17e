import type { Cause } from '../ledger/ledgerState.ts';
import type { CauseGraph, GraphEdge, GraphNode, GraphRoot } from './graph.ts';
import { indexOf, surfaceOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';
import { wholeOf } from './surfaceWords.ts';

/** What a break spoiled and by which touches: its roots first, then everything that it spread to. */
export function breakGraph(log: RunLog, number: number): CauseGraph {
  const { ledger } = indexOf(log);
  const nodes = (ledger.breaks[number - 1]?.spread ?? []).map(({ surface }) => nodeOf(log, surface));
  return { nodes, ...edgesAndRoots(log, ledger.causes.filter((cause) => cause.break === number)) };
}

/**
 * Everything through which a surface came to be unsterile by a step, back to its root or roots: also the ways by which it would have
 * become so, had the first not been. Empty while it was as it should be.
 */
export function causesOf(log: RunLog, surface: string, step: number): CauseGraph {
  const { ledger } = indexOf(log);
  const bySurface = new Map<string, Cause[]>();
  for (const cause of ledger.causes) {
    const list = bySurface.get(cause.surface);
    if (list) list.push(cause);
    else bySurface.set(cause.surface, [cause]);
  }
  // A surface is looked at again when it counts up to a later step than before.
  const until = new Map<string, number>();
  const found = new Set<Cause>();
  const look = [{ surface, step }];
  for (let next = look.pop(); next; next = look.pop()) {
    if ((until.get(next.surface) ?? -1) >= next.step) continue;
    until.set(next.surface, next.step);
    for (const cause of bySurface.get(next.surface) ?? []) {
      if (cause.step > next.step) continue;
      found.add(cause);
      if (cause.rule === null && cause.from !== null) look.push({ surface: cause.from, step: cause.step });
    }
  }
  const causes = ledger.causes.filter((cause) => found.has(cause));
  const nodes = [...until.keys()].filter((id) => ledger.isSpoiled(id) && bySurface.get(id)![0]!.step <= step).map((id) => nodeOf(log, id));
  nodes.sort((p, q) => p.step - q.step || p.depth - q.depth || (p.surface < q.surface ? -1 : 1));
  return { nodes, ...edgesAndRoots(log, causes) };
}

/** The way by which a surface in fact lost its sterility, root first; empty if it did not. */
export function chainTo(log: RunLog, surface: string): readonly GraphNode[] {
  const { ledger } = indexOf(log);
  const chain: GraphNode[] = [];
  let id: string | null = surface;
  while (id !== null && ledger.isSpoiled(id)) {
    chain.unshift(nodeOf(log, id));
    id = spreadOf(log, id)?.from ?? null;
  }
  return chain;
}

function spreadOf(log: RunLog, surface: string) {
  const { ledger } = indexOf(log);
  const number = ledger.spoiledBy(surface);
  return number === null ? undefined : ledger.breaks[number - 1]!.spread.find((spread) => spread.surface === surface);
}

function nodeOf(log: RunLog, id: string): GraphNode {
  const { ledger, touchOf } = indexOf(log);
  const surface = surfaceOf(log, id);
  const whole = wholeOf(surface);
  const known = ledger.breaks[ledger.spoiledBy(id)! - 1]!;
  const spread = spreadOf(log, id)!;
  const place = spread.touch === null ? undefined : touchOf.get(spread.touch);
  const at = place ?? (spread.depth === 0 ? known : null);
  return {
    surface: id, words: surface.words, thing: whole.id, thingWords: whole.words, break: known.number, depth: spread.depth, step: spread.step,
    x: at?.x ?? null, y: at?.y ?? null,
  };
}

function edgesAndRoots(log: RunLog, causes: readonly Cause[]): { edges: GraphEdge[]; roots: GraphRoot[] } {
  const edges: GraphEdge[] = [];
  const roots: GraphRoot[] = [];
  for (const { surface, from, step, touch, rule, break: number } of causes) {
    if (rule !== null) {
      const againstWords = from === null ? null : surfaceOf(log, from).words;
      roots.push({ surface, step, rule, break: number, against: from, againstWords, touch });
    } else if (from !== null) {
      const spread = spreadOf(log, surface);
      edges.push({ from, to: surface, step, touch, first: spread?.step === step && spread.from === from && spread.touch === touch });
    }
  }
  return { edges, roots };
}
