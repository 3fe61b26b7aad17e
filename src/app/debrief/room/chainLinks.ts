import type { GraphRoot, ThingGraph, ThingNode } from '../../../core/debrief/graph.ts';
import type { RunLog } from '../../../core/debrief/runLog.ts';
import type { Break } from '../../../core/ledger/break.ts';
import { roughWords } from '../roughWords.ts';
import { groupWords, spreadGroups } from '../../parts/spreadGroups.ts';

/** One numbered link of a break's chain: a thing that lost its sterility, when, where and by what. */
export interface ChainLink {
  readonly number: number;
  readonly step: number;
  /** Metres in the room, or null where no place is known. */
  readonly x: number | null;
  readonly y: number | null;
  /** "left glove: fingers and palm". */
  readonly words: string;
  /** "left glove", for where there is little room. */
  readonly short: string;
  /** "met the bed rail", "touched by the drape". */
  readonly how: string;
  /** Number of the link that it came from, or null at the root. */
  readonly from: number | null;
  readonly surfaces: readonly string[];
}

/** The chain of a break by things, in order of time, the root first. */
export function chainLinks(graph: ThingGraph, { facts }: Pick<RunLog, 'facts'>): readonly ChainLink[] {
  const numbers = new Map(graph.nodes.map(({ thing }, k) => [thing, k + 1]));
  return graph.nodes.map((node, k) => {
    const edge = node.depth === 0 ? undefined : graph.edges.find(({ to, first }) => first && to === node.thing);
    const from = edge ? (numbers.get(edge.from) ?? null) : null;
    return {
      number: k + 1, step: node.step, ...placeOf(node, facts),
      words: `${renewed(node.thing)}${partWords(node.parts.map(({ words }) => words), node.words)}`,
      short: `${renewed(node.thing)}${node.words}`,
      how: edge ? howWords(edge.touch, graph.nodes.find(({ thing }) => thing === edge.from)) : rootWords(rootOf(graph, node)),
      from,
      surfaces: node.parts.map(({ surface }) => surface),
    };
  });
}

/** Whether nothing of a link would have lost its sterility. */
export const isSpared = ({ surfaces }: ChainLink, spared: ReadonlySet<string> | null): boolean => spared !== null && surfaces.length > 0 && surfaces.every((surface) => spared.has(surface));

/** The chain as a result tells it, before the run has been played again; only the place of the root is known. */
export function writtenLinks(broken: Break, words: Readonly<Record<string, string>>): readonly ChainLink[] {
  const wordsOf = (id: string): string => words[id] ?? id;
  const thingOf = (id: string): string => id.slice(0, id.indexOf(':') + 1) || id;
  const groups = spreadGroups(broken);
  const first = groups.filter((group, k) => groups.findIndex((other) => thingOf(other.surfaces[0]!) === thingOf(group.surfaces[0]!)) === k);
  return first.map(({ step, surfaces, from }, k): ChainLink => {
    const parts = surfaces.map(wordsOf);
    const source = from === null ? -1 : first.findIndex((other) => thingOf(other.surfaces[0]!) === thingOf(from));
    const against = broken.against === null ? 'root' : `met the ${roughWords(wordsOf(broken.against))}`;
    return {
      number: k + 1, step, x: k === 0 ? broken.x : null, y: k === 0 ? broken.y : null, words: partWords(parts, roughWords(parts[0]!)), short: roughWords(parts[0]!),
      how: from === null ? against : `touched by the ${roughWords(wordsOf(from))}`, from: source < 0 ? null : source + 1, surfaces,
    };
  });
}

/** A use at the site is no touch of the log; its place is told apart. */
function placeOf({ x, y, step, parts }: ThingNode, facts: RunLog['facts']): { x: number | null; y: number | null } {
  if (x !== null && y !== null) return { x, y };
  const used = facts.find((fact) => fact.kind === 'used' && fact.step === step && parts.some(({ surface }) => surface === fact.site));
  return used?.kind === 'used' ? { x: used.x, y: used.y } : { x, y };
}

/** Stretches of cord and sheet are counted in centimetres, which says nothing here: those are told as a whole, hands by their parts. */
const partWords = (parts: readonly string[], whole: string): string => (parts.some((words) => /\d+ cm from/.test(words)) ? whole : groupWords(parts, (words) => words));
/** "new " for what took the place of another in this run. */
const renewed = (thing: string): string => (/#(?:[2-9]|\d\d)/.test(thing) ? 'new ' : '');

const rootOf = ({ roots }: ThingGraph, node: ThingNode): GraphRoot | undefined => roots.find(({ surface }) => node.parts.some((part) => part.surface === surface));

const rootWords = (root: GraphRoot | undefined): string => (root?.againstWords ? `met the ${roughWords(root.againstWords)}` : 'root');

const howWords = (touch: number | null, from: ThingNode | undefined): string => `${touch === null ? 'used with' : 'touched by'} the ${from?.words ?? 'same thing'}`;
