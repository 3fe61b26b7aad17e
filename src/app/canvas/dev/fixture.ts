import type { Side } from '../../../core/base/side.ts';
import { lookOf, standingAt } from '../../../core/room/assistant/assistantBody.ts';
import { solveArm } from '../../../core/room/arm.ts';
import { layoutOf, type Point } from '../../../core/room/layout.ts';
import { THING_SHAPES } from '../../../core/room/itemShapes.ts';
import { HAND } from '../../../core/room/handShape.ts';
import { atEqualSteps } from '../../../core/room/layPaths.ts';
import { refine, type WidePoint } from '../pen/curves.ts';
import type { HandPicture, HandPose, ItemPicture, ProbeDress, RoomPicture, StrandPicture, SurfaceMark } from '../../../core/room/picture.ts';
import { skinKind } from '../../../core/room/skin.ts';
import { scenarioSchema, type Scenario } from '../../../core/scenario/schema.ts';

export type FixtureName = 'field' | 'marked' | 'open' | 'aside';

/** Film as it should be on the probe: one band behind the head, one where the cord begins. */
const DRESS: ProbeDress = { bands: [0.024, 0.124], bubbles: [], torn: false };

/** The sheet as it lies over patient and rail, and the cord: centimetres, right side of the bed first. */
const DRAPE_CM: readonly Point[] = [[-10.2, 108.4], [-12.6, 107.6], [-17, 104.4], [-20.4, 100.4], [-24, 97.2], [-29, 96.2], [-36, 99.4], [-41, 107], [-44.6, 116], [-47, 123.6], [-48.8, 125.3], [-50.6, 124.4], [-52, 119], [-52.4, 111], [-52.2, 98], [-52.4, 84], [-52.2, 60]];
const CORD_CM: readonly Point[] = [[-5, 122.6], [-4.6, 127], [-2, 133.2], [4, 137], [10.6, 137], [16.4, 132], [20.8, 123], [23.4, 114], [25.2, 106], [28.4, 99.6], [33, 99.6], [37.6, 103.6], [41, 109.6], [44.2, 119], [46.6, 126.6], [49.2, 128.2], [52.8, 127], [57, 121], [62, 110], [70, 92], [78, 77], [86, 74], [94, 80], [100, 90]];

export function makeFixture(name: FixtureName): RoomPicture {
  const scenario = scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'dev', title: 'Dev', summary: 'For pictures', seed: 1, station: 'field' });
  const layout = layoutOf(scenario);
  const skin = layout.skin.map(([x, y]): Point => [x, y + layout.mattress.top]);
  const torsoX = name === 'aside' ? -0.2 : 0;
  const hands = handsOf(scenario, name, torsoX);
  const items = itemsOf(scenario, name, hands);
  const strands = [drapeOf(scenario, 'right'), drapeOf(scenario, 'left'), cordOf(scenario, items[0]!)];
  const marks = marksFor(name, strands, skin, scenario);
  return {
    step: 0, scenario, torsoX, hands, assistant: lookOf(standingAt(scenario.room.assistantXM), scenario.room.assistantXM), strands, items,
    bedUpM: 0,
    patientOutline: layout.hump.map(([x, y]) => [x, y + layout.mattress.top]),
    skinX: Float64Array.from(skin, ([x]) => x), skinY: Float64Array.from(skin, ([, y]) => y),
    skinSurfaces: skin.slice(1).map((_, i) => `skin:${i}`),
    gelOnSite: name === 'open' ? 0 : 0.8, coveredM: scenario.cord.coveredM, gelInSheathMl: 0, foldedM: 0, fingersInFold: [], gown: null, outletX: 1, outletY: 0.9,
    levelX: Float64Array.of(-0.46, -0.36, -0.25, -0.2), levelY: Float64Array.of(1.06, 1.0, 0.99, 1.02),
    fixed: Object.fromEntries(['rail.left', 'rail.right', 'pole', 'machine', 'bed', 'floor', 'kitTable', 'tableEdge', 'bin', 'face', 'gownFront'].map((id) => [id, id])),
    marks,
  };
}

function handsOf(scenario: Scenario, name: FixtureName, torsoX: number): Record<Side, HandPicture> {
  if (name === 'open') return { right: hand(scenario, 'right', 'open', [-0.27, 1.25], -0.35, null, torsoX), left: hand(scenario, 'left', 'open', [0.27, 1.25], -0.35, null, torsoX) };
  if (name === 'aside') return { right: hand(scenario, 'right', 'pinch', [-0.62, 1.12], -0.2, 'gel', torsoX), left: hand(scenario, 'left', 'pinch', [0.2, 1.2], -0.5, 'drape.left', torsoX) };
  return { right: hand(scenario, 'right', 'syringe', [-0.247, 1.19], -0.35, 'needle', torsoX), left: hand(scenario, 'left', 'probe', [0.035, 1.164], -0.06, 'probe', torsoX) };
}

/** A hand of the operator with its arm: the middle of the palm, the angle of the fingers. */
export function hand(scenario: Scenario, side: Side, pose: HandPose, [x, y]: Point, angle: number, holds: string | null, torsoX: number): HandPicture {
  const c = (side === 'left' ? -1 : 1) * Math.cos(angle);
  const s = Math.sin(angle);
  const parts = ['fingers', 'palm', 'back', 'cuff', 'lowerSleeve', 'upperSleeve', 'outerSleeve'] as const;
  const surfaces = Object.fromEntries(parts.map((part) => [part, `${side}:${part}`])) as HandPicture['surfaces'];
  return { side, pose, x, y, c, s, ...solveArm(scenario, side, torsoX, x, y, c, s), gripAlong: HAND.gripU, holds, targetX: x, targetY: y, surfaces };
}

function itemsOf(scenario: Scenario, name: FixtureName, hands: Record<Side, HandPicture>): ItemPicture[] {
  const kinds = [{ id: 'probe', kind: 'probe' as const, xM: scenario.probe.xM }, ...scenario.items];
  return kinds.map(({ id, kind, xM }): ItemPicture => {
    const dress = kind === 'probe' ? DRESS : null;
    const surfaces = kind === 'syringe' || kind === 'needleSyringe' ? [`${id}:body`, `${id}:needle`] : [`${id}:body`];
    const holder = (['left', 'right'] as const).find((side) => hands[side].holds === id) ?? null;
    if (holder === null) return { id, kind, surfaces, dress, heldBy: null, gone: false, used: 0, ...lying(kind, xM, name) };
    const { x, y, c, s } = hands[holder];
    const turn = (holder === 'left' ? 1 : -1) * THING_SHAPES[kind].holdAngle;
    const [tc, ts] = [Math.cos(turn), Math.sin(turn)];
    return { id, kind, surfaces, dress, heldBy: holder, gone: false, used: 0, x: x + c * HAND.gripU, y: y + s * HAND.gripU, c: c * tc - s * ts, s: s * tc + c * ts };
  });
}

function lying(kind: ItemPicture['kind'], x: number, name: FixtureName) {
  const slope = Math.sign(x) * 0.16;
  const y = kind === 'probe' && name === 'open' ? 1.02 : 0.985 + Math.max(0, 0.3 - Math.abs(x)) * 0.6;
  return { x, y, c: -Math.sign(x) * Math.cos(slope), s: -Math.sign(x) * Math.sin(slope) };
}

/** Corners rounded off. */
export const rounded = (points: readonly Point[]): Point[] => refine(points.map(([x, y]): WidePoint => [x, y, 0]), 8).map(([x, y]): Point => [x, y]);

function drapeOf(scenario: Scenario, side: Side): StrandPicture {
  const { linkM } = scenario.drape;
  const count = Math.round(scenario.drape[side].lengthM / linkM) + 1;
  const corners = DRAPE_CM.map(([x, y]): Point => [(side === 'right' ? x : -x - 9) / 100, y / 100]).map(([x, y]): Point => [side === 'left' && x > 0.24 ? x + 0.09 : x, y]);
  const start: Point[] = side === 'left' ? [[0, 1.1013], [0.05, 1.0985], [0.1, 1.086], [0.15, 1.0595]] : [];
  const points = atEqualSteps(rounded(side === 'left' ? [...start, ...corners.filter(([x]) => x > 0.19)] : corners), linkM, count);
  return { id: `drape.${side}`, x: Float64Array.from(points, ([x]) => x), y: Float64Array.from(points, ([, y]) => y), surfaces: points.slice(1).map((_, i) => `drape.${side}:${i}`), glued: points.map((_, i) => i < 4) };
}

function cordOf(scenario: Scenario, probe: ItemPicture): StrandPicture {
  const tail: Point[] = [0.07, 0.1].map((back): Point => [probe.x - back * probe.c, probe.y - back * probe.s]);
  const corners = [...tail, ...CORD_CM.slice(probe.heldBy === null ? 9 : 2).map(([x, y]): Point => [x / 100, y / 100])];
  const points = atEqualSteps(rounded(corners), scenario.cord.linkM, Math.round(scenario.cord.lengthM / scenario.cord.linkM) + 1);
  const upTo = points.findIndex(([x], i) => i > 60 && x > 0.99);
  const kept = upTo > 0 ? points.slice(0, upTo) : points;
  return { id: 'cord', x: Float64Array.from([...kept.map(([x]) => x), 1]), y: Float64Array.from([...kept.map(([, y]) => y), 0.9]), surfaces: kept.map((_, i) => `cord:${i}`), glued: [] };
}

function marksFor(name: FixtureName, strands: readonly StrandPicture[], skin: readonly Point[], scenario: Scenario): Map<string, SurfaceMark> {
  const marks = new Map<string, SurfaceMark>();
  for (const id of ['rail.left', 'rail.right', 'pole', 'machine', 'bed', 'floor', 'tableEdge', 'bin', 'face', 'left:outerSleeve', 'right:outerSleeve']) marks.set(id, 'unsterile');
  for (const strand of strands) {
    strand.surfaces.forEach((id, i) => {
      if (strand.id === 'cord' ? i >= 60 : Math.abs(strand.x[i]!) > 0.49) marks.set(id, 'unsterile');
      else if (strand.id === 'cord' && i >= 53) marks.set(id, 'unsterile');
    });
  }
  skin.slice(1).forEach(([x], i) => marks.set(`skin:${i}`, skinKind(scenario, x) === 'patientSkin' ? 'unsterile' : 'prepared'));
  if (name !== 'marked') return marks;
  for (const id of ['left:cuff', 'left:fingers', 'probe:body', 'right:lowerSleeve', 'needle:needle', 'gauze:body']) marks.set(id, 'became');
  strands[1]!.surfaces.forEach((id, i) => { if (i > 24 && i < 37) marks.set(id, 'became'); });
  return marks;
}
