import { cos, length, PI } from '../base/portableMath.ts';
import { SIDES, signOf, type Side } from '../base/side.ts';
import { World } from '../physics/world.ts';
import type { BodyKind, ShapeSpec } from '../physics/types.ts';
import type { Scenario } from '../scenario/schema.ts';
import { gownsFirst, hasGownTable, loadsSheath } from '../scenario/station.ts';
import { palmOf, standingAt } from './assistant/assistantBody.ts';
import { dressed, undressed, type Dress } from './gown/dress.ts';
import { addGown, pinGown, type GownParts } from './gown/gownScene.ts';
import { HAND, handShapes } from './handShape.ts';
import { THING_SHAPES, thingCorners, type ThingKind } from './itemShapes.ts';
import { layoutOf, skinHeight, type Layout, type Point } from './layout.ts';
import { cordPath } from './layCord.ts';
import { DRAPE_RADIUS_M, drapePath } from './layPaths.ts';
import { newCover, type Cover } from './sheath/cover.ts';
import { hangingPath, HELD_AT, holderAt } from './sheath/inHolder.ts';
import { Pocket } from './sheath/Pocket.ts';

/** Groups of things that may push each other. Hands pass items and cord in depth: they take them, but do not shove them. */
const GROUP = { bed: 1, fixture: 2, hand: 4, item: 8, drape: 16, cord: 32, pocket: 64 } as const;

/** Length of sheet along the bed that moves with the section, in metres: it turns mass per area into mass per length. */
const SECTION_M = 1.2;
const DRAPE_STIFFNESS_N = 5000;
const DRAPE_BENDING_NM2 = 2e-6;
const CORD_STIFFNESS_N = 20000;
const CORD_BENDING_NM2 = 3e-4;
/** Film of 60 micrometres (0.057 kg/m²) with the fold and the gel that clings to it, in kg/m². */
const POCKET_KG_PER_M2 = 0.2;
/** Inertia of the clip: weightless and heavier than a real one (10 g), so that the two chains it joins do not chatter against each other. */
const CLIP_KG = 0.1;
/** How far inside the edge of the bed the cord is clipped to the drape (m). */
const CLIP_INSIDE_M = 0.05;

export interface ThingBody {
  readonly id: string;
  readonly kind: ThingKind;
  readonly body: number;
  readonly rubbish: boolean;
}

/** Parts of the scene that are there where a sheath is loaded: the film when it is open, the folded sheath among the things, and what holds the bare probe. */
export interface SheathParts {
  readonly pocket: number;
  readonly roll: number;
  readonly holder: number;
}

/** The physical scene of a run: the solver's world and the numbers by which the room knows its parts. */
export interface Scene {
  readonly scenario: Scenario;
  readonly layout: Layout;
  readonly world: World;
  /** Mattress and raised rails; they can move where the bed is adjustable. */
  readonly bed: readonly number[];
  readonly hump: number;
  readonly hands: Readonly<Record<Side, number>>;
  /** The assistant's, driven: they push nothing and can take hold. */
  readonly assistantHands: Readonly<Record<Side, number>>;
  /** The probe first, then the items in the order of the scenario, then the folded sheath where one is loaded. */
  readonly things: readonly ThingBody[];
  readonly drapes: Readonly<Record<Side, number>>;
  readonly cord: number;
  /** Sticks the adhesive edge of a drape to the skin where it lies now. */
  readonly glue: (side: Side) => void;
  /** The clip that ties the cord to the drape, with the node of the cord that it holds; null where there is none. */
  readonly clip: { readonly body: number; readonly cordNode: number } | null;
  readonly sheath: SheathParts | null;
  /** What film covers of probe and cord now. */
  readonly cover: Cover;
  /** Null where the operator is gowned and gloved from the start and no glove is changed by hand. */
  readonly gown: GownParts | null;
  readonly dress: Dress | null;
}

/** Where a palm is at the start, from the middle of the operator (m). */
const HAND_START: Readonly<Record<Side, Point>> = { right: [-0.27, 1.27], left: [0.27, 1.27] };

/** Where a palm is at the start (m). */
export const handStart = (scenario: Scenario, side: Side): Point => [HAND_START[side][0] + (gownsFirst(scenario) ? scenario.gown.standXM : 0), HAND_START[side][1]];

/** How the sheets lie after settling, from the edge of the opening outwards. */
export type LaidSheets = Readonly<Record<Side, readonly Point[]>>;

/** The scene with sheets alone, as they are laid before anything is put on them. */
export function buildSheets(scenario: Scenario): { readonly world: World; readonly drapes: Readonly<Record<Side, number>> } {
  const layout = layoutOf(scenario);
  const world = new World({ gravity: gravityOf(scenario) });
  addFixedThings(world, scenario, layout);
  const hump = addHump(world, scenario, layout);
  const path = (side: Side): Point[] => drapePath(scenario, layout, side);
  const drapes = { right: addDrape(world, scenario, path('right')), left: addDrape(world, scenario, path('left')) };
  world.finalize();
  for (const side of SIDES) glueDrape(world, scenario, side, drapes[side], hump);
  return { world, drapes };
}

/** Builds the scene as a perfect operator would have left it, on sheets that have settled; things are put down from just above. */
export function buildScene(scenario: Scenario, sheets: LaidSheets): Scene {
  const layout = layoutOf(scenario);
  const world = new World({ gravity: gravityOf(scenario) });
  const bed = addFixedThings(world, scenario, layout);
  const hump = addHump(world, scenario, layout);
  const hands = { right: addHand(world, scenario, 'right'), left: addHand(world, scenario, 'left') };
  const laidThings = addThings(world, scenario, layout, sheets);
  const gown = hasGownTable(scenario) ? addGown(world, scenario, laidThings.length) : null;
  const things = [...laidThings, ...(gown?.things ?? [])];
  const drapes = { right: addDrape(world, scenario, sheets.right), left: addDrape(world, scenario, sheets.left) };
  const cordSide: Side = scenario.room.machine.outletXM >= 0 ? 'left' : 'right';
  const loads = loadsSheath(scenario);
  const cord = world.addStrand({
    points: loads ? hangingPath(scenario) : cordPath(scenario, layout, tailOfProbe(scenario, layout, sheets), sheets[cordSide]),
    massPerM: scenario.cord.massKgPerM, radius: scenario.cord.radiusM, radiusOnStatic: scenario.cord.radiusM + 2 * DRAPE_RADIUS_M,
    stiffnessN: CORD_STIFFNESS_N, bendingNm2: CORD_BENDING_NM2, friction: scenario.cord.friction, airDragPerS: 0.5,
    // Held up in a bight its two parts hang beside each other in depth.
    selfCollide: !loads, linkM: scenario.cord.linkM, collides: GROUP.cord, collidesWith: GROUP.bed | GROUP.drape | GROUP.cord,
  });
  const sheath = loads ? { pocket: addPocket(world, scenario), roll: laidThings.length - 1, holder: addHolder(world, scenario) } : null;
  const clip = scenario.cord.clipN > 0 && !loads ? addClip(world) : -1;
  const assistantHands = { right: addAssistantHand(world, scenario, 'right'), left: addAssistantHand(world, scenario, 'left') };
  world.finalize();
  const first = world.strandStart(cord);
  world.attachNode(first, things[0]!.body, -THING_SHAPES.probe.halfLength, 0);
  world.pinNode(first + world.strandSize(cord) - 1);
  if (sheath) {
    world.weld(sheath.holder, things[0]!.body, { relative: HELD_AT });
    for (let k = 0; k < world.strandSize(sheath.pocket); k++) world.pinNode(world.strandStart(sheath.pocket) + k);
  }
  if (gown) pinGown(world, gown, gownsFirst(scenario));
  const closed = clip >= 0 ? { body: clip, cordNode: closeClip(world, layout, cordSide, clip, cord, drapes[cordSide]) } : null;
  const glue = (side: Side): void => glueDrape(world, scenario, side, drapes[side], hump);
  for (const side of SIDES) glue(side);
  return { scenario, layout, world, bed, hump, hands, assistantHands, things, drapes, cord, glue, clip: closed, sheath, cover: newCover(loads ? null : scenario.cord.coveredM), gown, dress: gown && (gownsFirst(scenario) ? undressed(scenario.gown.standXM) : dressed(scenario)) };
}

/** Head-down tilt turns the bed about an axis in this plane: what is left of gravity in the plane is its cosine. */
const gravityOf = (scenario: Scenario): number => -9.81 * cos((scenario.room.bed.headDownDeg * PI) / 180);

function addHump(world: World, scenario: Scenario, layout: Layout): number {
  return world.addBody({
    kind: 'driven', x: 0, y: layout.mattress.top, shapes: [{ verts: layout.hump, radius: 0 }],
    friction: scenario.drape.frictionOnSkin, collides: GROUP.bed, collidesWith: GROUP.hand | GROUP.item | GROUP.drape | GROUP.cord,
  });
}

/** Adds all that stands in the room. Returns the bodies of the bed. */
function addFixedThings(world: World, scenario: Scenario, layout: Layout): number[] {
  const { mattress, rails, kitTable, pole, machine } = layout;
  const friction = scenario.drape.frictionOnBed;
  const bed = { collides: GROUP.bed, collidesWith: GROUP.hand | GROUP.item | GROUP.drape | GROUP.cord };
  const fixture = { collides: GROUP.fixture, collidesWith: GROUP.hand | GROUP.item };
  const add = (shape: ShapeSpec, masks: { collides: number; collidesWith: number }, kind: BodyKind = 'static'): number => world.addBody({ kind, x: 0, y: 0, shapes: [shape], friction, ...masks });
  const box = (left: number, bottom: number, right: number, top: number): ShapeSpec => ({ verts: [[left, bottom], [right, bottom], [right, top], [left, top]], radius: 0 });
  const round = 0.02;
  const bedKind = scenario.room.bed.adjustable ? 'driven' : 'static';
  const bedBodies = [];
  bedBodies.push(add({ verts: [[-mattress.halfWidth + round, mattress.bottom], [mattress.halfWidth - round, mattress.bottom], [mattress.halfWidth - round, mattress.top - round], [-mattress.halfWidth + round, mattress.top - round]], radius: round }, bed, bedKind));
  for (const side of SIDES) {
    const rail = rails[side];
    if (rail.up) bedBodies.push(add({ verts: [[rail.x, rail.bottom], [rail.x, rail.topCentre]], radius: rail.radius }, bed, bedKind));
  }
  add(box(-4, -1, 4, 0), bed);
  add(box(kitTable.left, kitTable.top - 0.03, kitTable.right, kitTable.top), bed);
  add({ verts: [[pole.x, 0], [pole.x, pole.top]], radius: pole.radius }, fixture);
  add(box(machine.left, machine.bottom, machine.right, machine.top), fixture);
  add(box(-4, -1, -2.2, 4), fixture);
  add(box(2.2, -1, 4, 4), fixture);
  return bedBodies;
}

function addHand(world: World, scenario: Scenario, side: Side): number {
  const [x, y] = handStart(scenario, side);
  return world.addBody({
    kind: 'dynamic', x, y, c: -signOf(side), s: 0, massKg: HAND.massKg, gravityScale: 0, friction: 0.6,
    shapes: handShapes(side),
    collides: GROUP.hand, collidesWith: GROUP.bed | GROUP.fixture | GROUP.drape,
  });
}

function addAssistantHand(world: World, scenario: Scenario, side: Side): number {
  const { x, y, c, s } = palmOf(standingAt(scenario.room.assistantXM).limbs[side]);
  return world.addBody({ kind: 'driven', x, y, c, s, friction: 0, shapes: [{ verts: [[0, 0]], radius: 0.01 }], collides: 0, collidesWith: 0 });
}

function addThings(world: World, scenario: Scenario, layout: Layout, sheets: LaidSheets): ThingBody[] {
  const loads = loadsSheath(scenario);
  const add = (id: string, kind: ThingKind, x: number, massKg: number, rubbish: boolean, at?: { readonly x: number; readonly y: number; readonly c: number; readonly s: number }): ThingBody => {
    const shape = THING_SHAPES[kind];
    const rounding = 0.003;
    const body = world.addBody({
      kind: 'dynamic', x, y: layHeight(layout, sheets, x, kind), c: wayOf(x, kind), s: 0, massKg, friction: 0.5,
      shapes: [{ verts: thingCorners(shape, rounding), radius: rounding }],
      collides: GROUP.item, collidesWith: GROUP.bed | GROUP.fixture | GROUP.drape | (kind === 'probe' && loads ? GROUP.pocket : 0), ...at,
    });
    return { id, kind, body, rubbish };
  };
  const standing = (kind: ThingKind, x: number): { x: number; y: number; c: number; s: number } | undefined =>
    kind === 'gelBottle' ? { x, y: layout.machine.top + THING_SHAPES[kind].halfLength + 0.002, c: 0, s: 1 } : undefined;
  return [
    add('probe', 'probe', scenario.probe.xM, scenario.probe.massKg, false, loads ? holderAt(scenario) : undefined),
    ...scenario.items.map((item) => add(item.id, item.kind, item.xM, THING_SHAPES[item.kind].massKg, item.rubbish, standing(item.kind, item.xM))),
    ...(loads ? [add('sheathRoll', 'sheathRoll', scenario.sheath.xM, THING_SHAPES.sheathRoll.massKg, false)] : []),
  ];
}

/** Height of what lies under a thing of half length `half` at x. */
function restHeight(layout: Layout, sheets: LaidSheets, x: number, half: number): number {
  const { kitTable, mattress } = layout;
  if (x > kitTable.left && x < kitTable.right) return kitTable.top;
  let height = mattress.top + skinHeight(layout, x);
  for (const side of SIDES) for (const [px, py] of sheets[side]) if (Math.abs(px - x) <= half * 0.6 && Math.abs(px) < Math.abs(layout.crest[side].x) - 0.02) height = Math.max(height, py);
  return height;
}

/** A clip that ties the cord to the drape so that the slack stays on the field; it holds no more than its pull. */
function addClip(world: World): number {
  return world.addBody({ kind: 'dynamic', x: 0, y: 5, massKg: CLIP_KG, lockRotation: true, gravityScale: 0, friction: 0, shapes: [{ verts: [[0, 0]], radius: 0.004 }], collides: 0, collidesWith: 0 });
}

/** Closes the clip where the cord climbs to the edge. Returns the node of the cord that it holds. */
function closeClip(world: World, layout: Layout, side: Side, clip: number, cord: number, drape: number): number {
  const inside = Math.abs(layout.crest[side].x) - CLIP_INSIDE_M;
  let held = world.strandStart(cord) + world.strandSize(cord) - 1;
  while (signOf(side) * world.x[held]! > inside) held--;
  const start = world.strandStart(drape);
  const gap = (i: number): number => length(world.x[i]! - world.x[held]!, world.y[i]! - world.y[held]!);
  let node = start;
  for (let i = start; i < start + world.strandSize(drape); i++) if (gap(i) < gap(node)) node = i;
  world.teleportBody(clip, world.x[node]!, world.y[node]!, 1, 0);
  world.gripNode(clip, node, Infinity);
  world.gripNode(clip, held, Infinity);
  return held;
}

/** What holds the bare probe at the machine. */
function addHolder(world: World, scenario: Scenario): number {
  const { x, y } = holderAt(scenario);
  return world.addBody({ kind: 'driven', x, y, friction: 0, shapes: [{ verts: [[0, 0]], radius: 0.005 }], collides: 0, collidesWith: 0 });
}

/** The film of an opened sheath, away until it is open. Its section stands for both walls with gel on them. */
function addPocket(world: World, scenario: Scenario): number {
  return world.addStrand({
    points: Pocket.away(), massPerM: POCKET_KG_PER_M2 * scenario.sheath.widthM, radius: 0.0005, stiffnessN: 2000, bendingNm2: 0, friction: 0.1, airDragPerS: 6, selfCollide: false,
    collides: GROUP.pocket, collidesWith: GROUP.bed | GROUP.item,
  });
}

function addDrape(world: World, scenario: Scenario, points: readonly Point[]): number {
  return world.addStrand({
    points, massPerM: scenario.drape.areaMassKgPerM2 * SECTION_M, radius: DRAPE_RADIUS_M,
    stiffnessN: DRAPE_STIFFNESS_N, bendingNm2: DRAPE_BENDING_NM2, friction: 0.5, airDragPerS: 1, linkM: scenario.drape.linkM,
    collides: GROUP.drape, collidesWith: GROUP.bed | GROUP.hand | GROUP.item | GROUP.cord,
  });
}

function glueDrape(world: World, scenario: Scenario, side: Side, strand: number, hump: number): void {
  const spec = scenario.drape[side];
  const count = Math.round(spec.gluedM / scenario.drape.linkM) + (spec.gluedM > 0 ? 1 : 0);
  const start = world.strandStart(strand);
  const peelN = spec.peelNPerM * scenario.room.patient.openingM;
  for (let k = 0; k < count; k++) if (!world.isGlued(start + k)) world.glueNode(start + k, hump, peelN);
}

/** Where the cord leaves the probe as it lies before settling. */
function tailOfProbe(scenario: Scenario, layout: Layout, sheets: LaidSheets): Point {
  const { xM } = scenario.probe;
  return [xM - wayOf(xM, 'probe') * THING_SHAPES.probe.halfLength, layHeight(layout, sheets, xM, 'probe')];
}

/** Things are laid with their working end toward the patient, the probe with its tail, so that a hand from above takes it rightly. */
const wayOf = (x: number, kind: ThingKind): number => (x > 0 === (kind === 'probe') ? 1 : -1);

const layHeight = (layout: Layout, sheets: LaidSheets, x: number, kind: ThingKind): number =>
  restHeight(layout, sheets, x, THING_SHAPES[kind].halfLength) + THING_SHAPES[kind].halfHeight + 0.004;
