import { SIDES, type Side } from '../../base/side.ts';
import type { World } from '../../physics/world.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { THING_SHAPES, thingCorners, type ThingKind } from '../itemShapes.ts';
import { addEdge, addSleeve, BED, CLOTH } from './clothStrands.ts';
import { GownCloth } from './GownCloth.ts';
import { LimpSleeves } from './LimpSleeves.ts';

/** Groups of the solver: a thing meets what an item meets. */
const ITEM = 8;
const FIXTURE = 2;
/** Where gown and gloves lie on their table, from its middle (m): beside each other in depth, the cuff of each glove on the side of the hand that takes it. */
const PACKET_AT_M = 0.07;
const GLOVES_AT_M = 0.03;
const GLOVES_APART_M = 0.03;
const ROUNDING_M = 0.003;

/** A thing of gown and gloves with its body. */
interface GownThing {
  readonly id: string;
  readonly kind: ThingKind;
  readonly body: number;
  readonly rubbish: boolean;
}

/** Parts of the scene that are there where a gown is put on: the sides of the open gown as strands, and things by their place in the list. */
export interface GownParts {
  readonly edges: Readonly<Record<Side, number>>;
  /** The empty part of each sleeve. */
  readonly sleeves: Readonly<Record<Side, number>>;
  readonly packet: number;
  readonly gloves: Readonly<Record<Side, number>>;
  readonly card: number;
  readonly things: readonly GownThing[];
  /** Where each of them lies at the start, by its place in the list of things: x, y and the cosine of its angle. */
  readonly laid: Readonly<Record<number, readonly [number, number, number]>>;
}

/** Adds the gown table, the folded gown, the gloves, the card and the cloth; `first` is the place of the first thing in the scene's list. */
export function addGown(world: World, scenario: Scenario, first: number): GownParts {
  const { table, lengthM, sleeveM } = scenario.gown;
  const [left, right] = [table.xM - table.widthM / 2, table.xM + table.widthM / 2];
  world.addBody({ kind: 'static', x: 0, y: 0, shapes: [{ verts: [[left, table.topM - 0.03], [right, table.topM - 0.03], [right, table.topM], [left, table.topM]], radius: 0 }], friction: scenario.drape.frictionOnBed, collides: BED, collidesWith: 4 | ITEM | CLOTH });
  // The side of the table that is nearer to where the gown is put on has the gown on it.
  const toward = scenario.gown.standXM >= table.xM ? 1 : -1;
  const laid: Record<number, readonly [number, number, number]> = {};
  const add = (k: number, id: string, kind: ThingKind, x: number, y: number, c: number): GownThing => {
    laid[first + k] = [x, y, c];
    const shape = THING_SHAPES[kind];
    const body = world.addBody({ kind: 'dynamic', x, y, c, s: 0, massKg: shape.massKg, friction: 0.5, shapes: [{ verts: thingCorners(shape, ROUNDING_M), radius: ROUNDING_M }], collides: ITEM, collidesWith: BED | FIXTURE });
    return { id, kind, body, rubbish: false };
  };
  const lying = (kind: ThingKind): number => table.topM + THING_SHAPES[kind].halfHeight + 0.002;
  const gloveX = table.xM + toward * GLOVES_AT_M;
  // Each glove lies with its cuff where the other hand, which takes it, comes from.
  const things = [
    add(0, 'gownPacket', 'gownPacket', table.xM + toward * PACKET_AT_M, lying('gownPacket'), 1),
    add(1, 'gloveRight', 'glove', gloveX - GLOVES_APART_M, lying('glove'), -1),
    add(2, 'gloveLeft', 'glove', gloveX + GLOVES_APART_M, lying('glove'), 1),
    add(3, 'tieCard', 'tieCard', scenario.gown.standXM, 3, 1),
  ];
  const edge = (side: Side): number => addEdge(world, scenario, GownCloth.away(side, lengthM));
  const sleeve = (side: Side): number => addSleeve(world, scenario, LimpSleeves.away(side, sleeveM));
  return { edges: { right: edge('right'), left: edge('left') }, sleeves: { right: sleeve('right'), left: sleeve('left') }, packet: first, gloves: { right: first + 1, left: first + 2 }, card: first + 3, things, laid };
}

/** The cloth waits folded, the card until the back is tied; `lies` says whether gown and gloves lie on their table, else they are on. After the world is built. */
export function pinGown(world: World, gown: GownParts, lies: boolean): void {
  for (const strand of SIDES.flatMap((side) => [gown.edges[side], gown.sleeves[side]])) for (let k = 0; k < world.strandSize(strand); k++) world.pinNode(world.strandStart(strand) + k);
  for (const { kind, body } of gown.things) if (!lies || kind === 'tieCard') world.setBodyEnabled(body, false);
}
