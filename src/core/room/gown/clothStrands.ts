import type { World } from '../../physics/world.ts';
import type { Scenario } from '../../scenario/schema.ts';
import type { Point } from '../layout.ts';
import { GOWN_LINKS, SLEEVE_LINKS } from './gownFacts.ts';

/** Groups of the solver: cloth meets what a drape meets of the bed. */
export const BED = 1;
export const CLOTH = 16;
const STIFFNESS_N = 2000;
/** Half thickness of the cloth (m), and its friction on what it meets. */
export const CLOTH_R = 0.002;
const FRICTION = 0.3;
/** Air slows cloth that falls flat more than a cord (1/s); common practice. */
const DRAG = 3;
/** A sleeve weighs as its cloth does: about 0.5 m round, 50 g/m² (kg/m). */
const SLEEVE_KG_PER_M = 0.025;

/** Adds one side of the open gown from shoulder to hem, which carries half of it. Returns the strand. */
export const addEdge = (world: World, { gown }: Scenario, points: readonly Point[]): number => addCloth(world, points, gown.massKg / 2 / gown.lengthM, gown.lengthM / GOWN_LINKS);

/** Adds the empty part of a sleeve. Returns the strand. */
export const addSleeve = (world: World, { gown }: Scenario, points: readonly Point[]): number => addCloth(world, points, SLEEVE_KG_PER_M, gown.sleeveM / SLEEVE_LINKS);

function addCloth(world: World, points: readonly Point[], massPerM: number, linkM: number): number {
  return world.addStrand({ points, massPerM, linkM, radius: CLOTH_R, stiffnessN: STIFFNESS_N, bendingNm2: 0, friction: FRICTION, airDragPerS: DRAG, selfCollide: false, collides: CLOTH, collidesWith: BED });
}
