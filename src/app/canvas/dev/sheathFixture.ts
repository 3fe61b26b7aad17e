import { SIDES, type Side } from '../../../core/base/side.ts';
import { lookOf, standingAt } from '../../../core/room/assistant/assistantBody.ts';
import { HAND } from '../../../core/room/handShape.ts';
import { atEqualSteps } from '../../../core/room/layPaths.ts';
import type { Point } from '../../../core/room/layout.ts';
import { holderAt } from '../../../core/room/sheath/inHolder.ts';
import type { AssistantPicture, HandPicture, ItemPicture, ProbeDress, RoomPicture, StrandPicture, SurfaceMark } from '../../../core/room/picture.ts';
import { scenarioSchema, type Scenario } from '../../../core/scenario/schema.ts';
import { hand, makeFixture, rounded } from './fixture.ts';

/** Loading the probe, step by step; the last one is how it should not be. */
const NAMES = ['lying', 'overMouth', 'inside', 'drawing', 'banded', 'torn'] as const;
export type SheathFixtureName = (typeof NAMES)[number];
export const isSheathFixture = (name: string | null): name is SheathFixtureName => (NAMES as readonly (string | null)[]).includes(name);

const items = [
  { id: 'gel', kind: 'gelPacket', xM: -0.88 }, { id: 'bandOne', kind: 'band', xM: -0.8 }, { id: 'bandTwo', kind: 'band', xM: -0.76 },
  { id: 'bottle', kind: 'gelBottle', xM: 1.25 },
] as const;
const scenario = scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'dev-sheath', title: 'Dev', summary: 'For pictures', seed: 1, station: 'sheath', items });
/** Middle of the palm for fingertips there, and the direction of the fingers. */
type Placed = readonly [pose: HandPicture['pose'], tip: Point, angle: number, holds: string | null];
const DOWN = { c: 0, s: -1 };

/** What differs from step to step. Metres; lines in centimetres. */
interface Look {
  readonly right: Placed;
  readonly left: Placed;
  readonly probe: { readonly x: number; readonly y: number; readonly c: number; readonly s: number; readonly heldBy: Side | null; readonly dress: ProbeDress | null };
  readonly cordCm: readonly Point[];
  readonly pocketCm?: readonly Point[];
  readonly roll: boolean;
  readonly coveredM: number;
  readonly foldedM: number;
  readonly gelMl: number;
  readonly inFold: readonly Side[];
  /** Where the assistant stands, and the fingertips of both hands. */
  readonly assistant: { readonly x: number; readonly doing: AssistantPicture['doing']; readonly right: Point; readonly left: Point } | null;
}

const POCKET: readonly Point[] = [[-6, 121.5], [-6.6, 114], [-6.2, 107], [-4.4, 102.4], [-1.6, 100.9], [0, 100.6], [1.6, 100.9], [4.4, 102.4], [6.2, 107], [6.6, 114], [6, 121.5]];
const LOOKS: Readonly<Record<SheathFixtureName, Look>> = {
  lying: {
    right: ['open', [-0.19, 1.22], -0.35, null], left: ['open', [0.19, 1.22], -0.35, null],
    probe: { ...holderAt(scenario), heldBy: null, dress: null }, cordCm: [[86, 104], [86, 109], [83, 110], [80, 104], [81, 60], [88, 36], [95, 52], [100, 90]],
    roll: true, coveredM: 0, foldedM: 0, gelMl: 0, inFold: [], assistant: null,
  },
  overMouth: {
    right: ['pinch', [-0.06, 1.205], -0.1, 'pocket'], left: ['pinch', [0.06, 1.205], -0.1, 'pocket'],
    probe: { x: 0.005, y: 1.3, ...DOWN, heldBy: null, dress: null }, cordCm: [[0.5, 137], [0.7, 143], [1.8, 146], [6, 147.5], [14, 141], [28, 126], [44, 120], [58, 118], [70, 98], [80, 82], [92, 80], [100, 90]],
    pocketCm: POCKET, roll: false, coveredM: 0, foldedM: 1, gelMl: 6, inFold: ['right', 'left'],
    assistant: { x: 0.42, doing: 'overMouth', right: [0.025, 1.465], left: [0.3, 1.27] },
  },
  inside: {
    right: ['pinch', [-0.06, 1.205], -0.1, 'pocket'], left: ['open', [0.19, 1.15], -0.35, null],
    probe: { x: 0.005, y: 1.085, ...DOWN, heldBy: null, dress: null }, cordCm: [[0.5, 115.5], [0.6, 122], [1, 130], [4, 135], [14, 133], [28, 122], [44, 118], [58, 112], [70, 96], [80, 82], [92, 80], [100, 90]],
    pocketCm: POCKET, roll: false, coveredM: 0, foldedM: 1, gelMl: 6, inFold: ['right'],
    assistant: { x: 0.42, doing: 'lowering', right: [0.035, 1.345], left: [0.3, 1.25] },
  },
  drawing: {
    right: ['pinch', [0.128, 1.335], 0.5, 'cord'], left: ['probe', [0.06, 1.16], -0.05, 'probe'],
    probe: { x: 0.06, y: 1.16, ...DOWN, heldBy: 'left', dress: { bands: [], bubbles: [{ at: -0.004, lengthM: 0.016 }, { at: 0.034, lengthM: 0.012 }], torn: false } },
    cordCm: [[6, 123], [6, 129], [7, 132.6], [11, 134], [18, 130], [30, 124.5], [44, 121.5], [58, 116], [70, 98], [80, 82], [92, 80], [100, 90]],
    roll: false, coveredM: 0.28, foldedM: 0.8, gelMl: 0, inFold: [], assistant: { x: 0.66, doing: 'pullingTail', right: [0.29, 1.25], left: [0.6, 1.16] },
  },
  banded: {
    right: ['open', [-0.19, 1.22], -0.35, null], left: ['probe', [0.06, 1.16], -0.05, 'probe'],
    probe: { x: 0.06, y: 1.16, ...DOWN, heldBy: 'left', dress: { bands: [0.024, 0.18], bubbles: [{ at: 0.05, lengthM: 0.016 }], torn: false } },
    cordCm: [[6, 123], [6, 129], [7, 132.6], [11, 134], [18, 130], [30, 118], [38, 112], [44, 118], [49, 127.6], [58, 116], [70, 98], [80, 82], [92, 80], [100, 90]],
    roll: false, coveredM: 0.85, foldedM: 0, gelMl: 0, inFold: [], assistant: null,
  },
  torn: {
    right: ['open', [-0.19, 1.22], -0.35, null], left: ['pinch', [0.086, 1.225], -0.05, 'probe'],
    probe: { x: 0.06, y: 1.16, ...DOWN, heldBy: 'left', dress: { bands: [0.1], bubbles: [{ at: 0.014, lengthM: 0.009 }, { at: -0.045, lengthM: 0.02 }], torn: true } },
    cordCm: [[6, 123], [6, 129], [7, 132.6], [11, 134], [18, 130], [30, 118], [38, 112], [44, 118], [49, 127.6], [58, 116], [70, 98], [80, 82], [92, 80], [100, 90]],
    roll: false, coveredM: 0.85, foldedM: 0.15, gelMl: 0, inFold: [], assistant: null,
  },
};

export function makeSheathFixture(name: SheathFixtureName): RoomPicture {
  const look = LOOKS[name];
  const base = makeFixture('open');
  const strands = [...base.strands.slice(0, 2), strandOf('cord', look.cordCm, scenario.cord.linkM), ...(look.pocketCm ? [strandOf('pocket', look.pocketCm, 0.01)] : [])];
  return {
    ...base, scenario, strands, items: itemsOf(look), hands: { right: handOf('right', look.right), left: handOf('left', look.left) },
    assistant: assistantOf(look.assistant, scenario), coveredM: look.coveredM, foldedM: look.foldedM, gelInSheathMl: look.gelMl, fingersInFold: look.inFold,
    gelOnSite: 0, marks: marksFor(name, base.marks, strands, look.coveredM),
  };
}

function handOf(side: Side, [pose, [x, y], angle, holds]: Placed): HandPicture {
  const way = side === 'left' ? -1 : 1;
  return hand(scenario, side, pose, [x - way * Math.cos(angle) * HAND.gripU, y - Math.sin(angle) * HAND.gripU], angle, holds, 0);
}

function strandOf(id: 'cord' | 'pocket', corners: readonly Point[], stepM: number): StrandPicture {
  const points = atEqualSteps(rounded(corners.map(([x, y]): Point => [x / 100, y / 100])), stepM, 400);
  const [endX, endY] = corners.at(-1)!;
  const upTo = points.findIndex(([x, y], i) => i > 10 && Math.hypot(x - endX / 100, y - endY / 100) < stepM * 0.75);
  const kept = points.slice(0, upTo < 0 ? points.length : upTo + 1);
  return { id, x: Float64Array.from(kept, ([x]) => x), y: Float64Array.from(kept, ([, y]) => y), surfaces: kept.slice(1).map((_, i) => `${id}:${i}`), glued: [] };
}

function itemsOf({ probe, roll }: Look): ItemPicture[] {
  const plain = { heldBy: null, gone: false, used: 0, dress: null };
  const lying = items.map(({ id, kind, xM }): ItemPicture =>
    ({ ...plain, id, kind, surfaces: [`${id}:body`], x: xM, ...(kind === 'gelBottle' ? { y: 1.432, c: 0, s: 1 } : { y: kind === 'band' ? 0.954 : 0.957, c: 1, s: 0 }) }));
  const folded: ItemPicture = { ...plain, id: 'sheath', kind: 'sheathRoll', surfaces: ['sheath:body'], x: -1, y: 0.962, c: 1, s: 0, gone: !roll };
  return [{ ...plain, id: 'probe', kind: 'probe', surfaces: ['probe:body'], ...probe }, folded, ...lying];
}

function assistantOf(at: Look['assistant'], { room }: Scenario): AssistantPicture {
  if (at === null) return lookOf(standingAt(room.assistantXM), room.assistantXM);
  const state = standingAt(at.x);
  for (const side of SIDES) {
    const [x, y] = at[side];
    const [dx, dy] = [x - at.x, y - 1.38 + 0.22];
    const length = Math.hypot(dx, dy);
    Object.assign(state.limbs[side], { x, y, c: dx / length, s: dy / length, inPlane: true });
  }
  return lookOf(state, room.assistantXM, at.doing);
}

function marksFor(name: SheathFixtureName, base: RoomPicture['marks'], strands: readonly StrandPicture[], coveredM: number): Map<string, SurfaceMark> {
  const marks = new Map([...base].filter(([id]) => !id.startsWith('cord') && !id.startsWith('probe')));
  strands.find(({ id }) => id === 'cord')!.surfaces.forEach((id, i) => { if (i >= Math.max(0, coveredM - 0.15) / scenario.cord.linkM) marks.set(id, 'unsterile'); });
  marks.set('bottle:body', 'unsterile');
  if (coveredM === 0) marks.set('probe:body', 'unsterile');
  if (name === 'torn') marks.set('probe:body', 'became');
  if (name === 'inside') for (let i = 4; i < 11; i++) marks.set(`pocket:${strands[3]!.surfaces.length - i}`, 'became');
  if (name === 'inside') for (let i = 0; i < 4; i++) marks.set(`pocket:${i}`, 'unsterile');
  return marks;
}
