import { assert } from '../base/assert.ts';
import type { GlueSpec, PeelFront } from './peelFront.ts';
import type { SolverState } from './solverState.ts';
import type { Weld } from './welds.ts';

type Column = Float64Array | Int32Array | Int8Array | Uint8Array;

/** Everything the next sub-step reads, as plain data and typed arrays: it survives a structured clone. */
export interface WorldSnapshot {
  readonly columns: Readonly<Record<string, Column>>;
  readonly numbers: readonly number[];
  readonly held: readonly number[];
  readonly welds: readonly Weld[];
  readonly glue: readonly (readonly [number, GlueSpec])[];
  readonly fronts: readonly PeelFront[];
  readonly strands: readonly (readonly number[])[];
}

/** Columns with the number of entries in use. Candidate lists belong to the state: built at another moment they could remember other sides. */
function columns(state: SolverState): Record<string, [Column, number]> {
  const { nodes, bodies, shapes, fixed, rigid, candidates, pairs, soft } = state;
  const found: Record<string, [Column, number]> = {};
  const all = (prefix: string, store: object): void => {
    for (const [name, value] of Object.entries(store)) if (ArrayBuffer.isView(value)) found[`${prefix}.${name}`] = [value as Column, (value as Column).length];
  };
  const some = (prefix: string, store: object, count: number, names: readonly string[]): void => {
    for (const name of names) found[`${prefix}.${name}`] = [(store as Record<string, Column>)[name]!, count];
  };
  all('nodes', nodes);
  all('bodies', bodies);
  some('shapes', shapes, shapes.vx.length, ['vx', 'vy', 'nx', 'ny']);
  some('shapes', shapes, 4 * shapes.count, ['box']);
  some('fixed', fixed, fixed.count, ['node', 'shape', 'nx', 'ny', 'load']);
  some('rigid', rigid, rigid.oldCount, ['oldKey', 'oldLoad', 'oldShear', 'oldResidue']);
  some('rigid', rigid, rigid.count, ['a', 'b', 'load']);
  some('soft', soft, soft.count, ['nodeA', 'nodeB', 'nodeC', 'body', 'load']);
  some('candidates', candidates, candidates.nodeRun.length, ['nodeRun']);
  some('candidates', candidates, candidates.nodeRun[shapes.count], ['node', 'nodeFace', 'nodeDue']);
  some('candidates', candidates, candidates.linkCount, ['link', 'linkVertex', 'linkDue']);
  some('candidates', candidates, candidates.axisCount, ['axisLink', 'axisShape']);
  some('candidates', candidates, candidates.bodyPairCount, ['pairA', 'pairB']);
  some('candidates', candidates, candidates.runBox.length, ['runBox']);
  some('pairs', pairs, pairs.count, ['node', 'link', 'side', 'due']);
  some('pairs', pairs, pairs.runCount, ['runStrand', 'runOther']);
  some('pairs', pairs, pairs.runCount + 1, ['runStart']);
  some('state', state, state.calmNodeX.length, ['smoothX', 'smoothY', 'calmNodeX', 'calmNodeY']);
  some('state', state, state.calmBody.length, ['calmBody', 'knownForce']);
  return found;
}

/** Copies the state; the running world is not disturbed. */
export function takeSnapshot(state: SolverState): WorldSnapshot {
  const { fixed, rigid, soft, candidates, pairs } = state;
  const copies: Record<string, Column> = {};
  for (const [name, [column, count]] of Object.entries(columns(state))) copies[name] = column.slice(0, count);
  return {
    columns: copies,
    numbers: [
      fixed.count, rigid.oldCount, rigid.count, soft.count, candidates.linkCount, candidates.axisCount, candidates.bodyPairCount, pairs.count,
      state.substeps, state.h, state.quietSteps, state.stepCount, state.crossings, state.nextJoint, state.stale ? 1 : 0, state.someAsleep ? 1 : 0, state.quietSeconds, pairs.runCount,
    ],
    held: [...state.held],
    welds: state.welds.map((weld) => ({ ...weld })),
    glue: [...state.glue].map(([node, spec]) => [node, { ...spec }] as const),
    fronts: state.fronts.map((front) => ({ ...front })),
    strands: state.strands.map((s) => [s.tension, s.tensionAtStart, s.tensionAtEnd, s.hasForces ? 1 : 0, s.awake ? 1 : 0, s.calm, s.island, s.travel, s.travelAtShapes, s.firstBox, s.endBox]),
  };
}

/** Puts a snapshot back, also into a freshly built world of the same parts. */
export function restoreSnapshot(state: SolverState, snapshot: WorldSnapshot): void {
  const { fixed, rigid, soft, candidates, pairs } = state;
  assert(snapshot.strands.length === state.strands.length, `snapshot has ${snapshot.strands.length} strands, the world ${state.strands.length}`);
  assert(snapshot.columns['nodes.x']!.length === state.nodes.count, 'snapshot and world differ in nodes');
  const n = snapshot.numbers;
  [fixed.count, rigid.oldCount, rigid.count, soft.count, candidates.linkCount, candidates.axisCount, candidates.bodyPairCount, pairs.count] = n.slice(0, 8) as [number, number, number, number, number, number, number, number];
  [state.substeps, state.h, state.quietSteps, state.stepCount, state.crossings, state.nextJoint] = n.slice(8, 14) as [number, number, number, number, number, number];
  state.stale = n[14] === 1;
  state.someAsleep = n[15] === 1;
  state.quietSeconds = n[16]!;
  pairs.runCount = n[17]!;
  candidates.nodeRun.set(snapshot.columns['candidates.nodeRun'] as Int32Array);
  for (const [name, [column]] of Object.entries(columns(state))) column.set(snapshot.columns[name]!);
  state.held = [...snapshot.held];
  state.welds = snapshot.welds.map((weld) => ({ ...weld }));
  state.glue.clear();
  for (const [node, spec] of snapshot.glue) state.glue.set(node, { ...spec });
  state.fronts = snapshot.fronts.map((front) => ({ ...front }));
  state.strands.forEach((strand, k) => {
    const v = snapshot.strands[k]!;
    strand.setSubstep(state.h);
    [strand.tension, strand.tensionAtStart, strand.tensionAtEnd] = [v[0]!, v[1]!, v[2]!];
    strand.hasForces = v[3] === 1;
    strand.awake = v[4] === 1;
    [strand.calm, strand.island, strand.travel, strand.travelAtShapes, strand.firstBox, strand.endBox] = [v[5]!, v[6]!, v[7]!, v[8]!, v[9]!, v[10]!];
  });
  fixed.ofNode.fill(-1);
  state.slipped = [];
  state.peeled = [];
}
