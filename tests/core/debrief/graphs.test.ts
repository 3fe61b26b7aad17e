import { describe, expect, it } from 'vitest';
import { breakGraph, causesOf, chainTo } from '../../../src/core/debrief/causeGraph.ts';
import type { CauseGraph } from '../../../src/core/debrief/graph.ts';
import { thingGraph } from '../../../src/core/debrief/thingGraph.ts';
import { log } from '../ledger/log.ts';
import { logged } from './runLogs.ts';

const nodes = (graph: CauseGraph): string[] => graph.nodes.map(({ surface, depth, step }) => `${surface} ${depth} at ${step}`);
const edges = (graph: Pick<CauseGraph, 'edges'>): string[] => graph.edges.map(({ from, to, step, touch, first }) => `${from} > ${to} at ${step} by ${touch}${first ? '' : ', second'}`);
const roots = (graph: CauseGraph): string[] => graph.roots.map(({ surface, against, step, break: number }) => `${surface} on ${against} at ${step} of ${number}`);

/*
 *   railR ──1──▶ right palm ──2──▶ gel ──3──▶ drape 1
 *                     │                         │4
 *                     │                         ▼
 *                     └──5──▶ syringe ──6──▶ site      left fingers
 */
const story = logged(
  log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:palm', 'gel#1:all').tap('gel#1:all', 'drape#1:1').tap('drape#1:1', 'gloveL#1:fingers').tap('gloveR#1:palm', 'syringe#1:barrel').tap('syringe#1:barrel', 'site#1:all'),
);

describe('The graph of a break', () => {
  it('has what it spoiled with depth and step, the root first, and the touches between', () => {
    const graph = breakGraph(story, 1);
    expect(nodes(graph)).toEqual(['gloveR#1:palm 0 at 0', 'gel#1:all 1 at 1', 'drape#1:1 2 at 2', 'gloveL#1:fingers 3 at 3', 'syringe#1:barrel 1 at 4', 'site#1:all 2 at 5']);
    expect(edges(graph)).toEqual([
      'gloveR#1:palm > gel#1:all at 1 by 2', 'gel#1:all > drape#1:1 at 2 by 3', 'drape#1:1 > gloveL#1:fingers at 3 by 4',
      'gloveR#1:palm > syringe#1:barrel at 4 by 5', 'syringe#1:barrel > site#1:all at 5 by 6',
    ]);
    expect(roots(graph)).toEqual(['gloveR#1:palm on railR:all at 0 of 1']);
  });

  it('says where each surface lost it', () => {
    expect(breakGraph(story, 1).nodes.map(({ x, y }) => [x, y])).toEqual(Array.from({ length: 6 }, () => [0.1, 1.2]));
    const used = logged(log().tap('syringe#1:needle', 'railR:all').wait(9).use('syringe#1:needle'));
    const site = breakGraph(used, 1).nodes.find(({ surface }) => surface === 'site#1:all')!;
    expect([site.depth, site.x, site.y], 'no touch is known').toEqual([1, null, null]);
    const low = logged(log().enter('gloveL#1:palm', 'belowField'));
    expect(breakGraph(low, 1).nodes[0]).toMatchObject({ surface: 'gloveL#1:palm', x: 0, y: 1 });
  });

  it('of a risk without loss has a root alone', () => {
    const graph = breakGraph(logged(log().enter('arm:outerL', 'overField')), 1);
    expect(nodes(graph)).toEqual([]);
    expect(roots(graph)).toEqual(['arm:outerL on null at 0 of 1']);
  });

  it('of a break that is not there is empty', () => {
    expect(breakGraph(story, 2)).toEqual({ nodes: [], edges: [], roots: [] });
  });
});

describe('The chain to a surface', () => {
  it('goes from the root to it', () => {
    expect(chainTo(story, 'site#1:all').map(({ surface }) => surface)).toEqual(['gloveR#1:palm', 'syringe#1:barrel', 'site#1:all']);
    expect(chainTo(story, 'gloveL#1:palm')).toEqual([]);
  });

  /*
   *   railR ──▶ right palm ──▶ gel (first)      pole ──▶ left palm ──▶ gel (second way)
   */
  const twice = logged(
    log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:palm', 'gel#1:all').wait(300).tap('gloveL#1:palm', 'pole:all').tap('gloveL#1:palm', 'gel#1:all').tap('gel#1:all', 'drape#1:0'),
  );

  it('has every root by which the surface would have been lost', () => {
    const graph = causesOf(twice, 'drape#1:0', 999);
    expect(nodes(graph)).toEqual(['gloveR#1:palm 0 at 0', 'gel#1:all 1 at 1', 'gloveL#1:palm 0 at 302', 'drape#1:0 2 at 304']);
    expect(roots(graph)).toEqual(['gloveR#1:palm on railR:all at 0 of 1', 'gloveL#1:palm on pole:all at 302 of 2']);
    expect(edges(graph)).toContain('gloveL#1:palm > gel#1:all at 303 by 4, second');
    expect(chainTo(twice, 'drape#1:0').map(({ surface }) => surface)).toEqual(['gloveR#1:palm', 'gel#1:all', 'drape#1:0']);
  });

  it('has only what had happened by the step that is looked at', () => {
    expect(roots(causesOf(twice, 'gel#1:all', 302))).toEqual(['gloveR#1:palm on railR:all at 0 of 1']);
    expect(causesOf(twice, 'gel#1:all', 0)).toEqual({ nodes: [], edges: [], roots: [] });
    expect(nodes(causesOf(twice, 'gloveL#1:palm', 302)), 'what came to the other glove later is no cause of this').toEqual(['gloveL#1:palm 0 at 302']);
  });

  it('ends although two things hold one another', () => {
    const held = logged(log().touch('gloveR#1:palm', 'gel#1:all').touch('gel#1:all', 'gloveL#1:palm').touch('gloveL#1:palm', 'gloveR#1:palm').wait(5).tap('gloveR#1:palm', 'railR:all').tap('gloveL#1:palm', 'pole:all'));
    expect(roots(causesOf(held, 'gel#1:all', 99))).toEqual(['gloveR#1:palm on railR:all at 5 of 1']);
    expect(roots(causesOf(held, 'gloveL#1:palm', 99))).toEqual(['gloveR#1:palm on railR:all at 5 of 1', 'gloveL#1:palm on pole:all at 6 of null']);
  });
});

describe('A graph of things', () => {
  it('takes their parts together, with the first touch between two of them', () => {
    const both = logged(log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:fingers', 'railR:all').tap('gloveR#1:fingers', 'drape#1:1').tap('gloveR#1:palm', 'drape#1:2').tap('drape#1:2', 'drape#1:1'));
    const things = thingGraph(breakGraph(both, 1));
    expect(things.nodes.map(({ thing, depth, step, parts }) => `${thing} ${depth} at ${step}: ${parts.map(({ surface, step: at }) => `${surface} ${at}`).join(', ')}`)).toEqual([
      'gloveR#1 0 at 0: gloveR#1:palm 0, gloveR#1:fingers 1',
      'drape#1 1 at 2: drape#1:1 2, drape#1:2 3',
    ]);
    expect(edges(things)).toEqual(['gloveR#1 > drape#1 at 2 by 3']);
  });
});
