import type { CauseGraph, GraphEdge, GraphNode, ThingGraph, ThingNode } from './graph.ts';

/** Takes the parts of each thing together. Between two things there is one edge, the first; within a thing none. */
export function thingGraph({ nodes, edges, roots }: CauseGraph): ThingGraph {
  const parts = new Map<string, GraphNode[]>();
  for (const node of nodes) {
    const list = parts.get(node.thing);
    if (list) list.push(node);
    else parts.set(node.thing, [node]);
  }
  const thingOf = new Map(nodes.map(({ surface, thing }) => [surface, thing]));
  const between = new Map<string, GraphEdge>();
  const inOrder = [...edges].sort((p, q) => Number(q.first) - Number(p.first) || p.step - q.step);
  for (const edge of inOrder) {
    const [from, to] = [thingOf.get(edge.from), thingOf.get(edge.to)];
    if (from === undefined || to === undefined || from === to || between.has(`${from} ${to}`)) continue;
    between.set(`${from} ${to}`, { ...edge, from, to });
  }
  return { nodes: [...parts.values()].map(thingNode), edges: [...between.values()].sort((p, q) => p.step - q.step), roots };
}

function thingNode(parts: readonly GraphNode[]): ThingNode {
  const first = parts.reduce((earliest, node) => (node.step < earliest.step || (node.step === earliest.step && node.depth < earliest.depth) ? node : earliest));
  const { thing, thingWords, depth, step, x, y } = first;
  return { thing, words: thingWords, depth, step, x, y, parts };
}
