import type { Scenario } from '../../../core/scenario/schema.ts';
import { gownsFirst } from '../../../core/scenario/station.ts';
import type { RoomPart } from '../../run/stagePort.ts';
import type { ChainLink } from './chainLinks.ts';

/** What is always seen: the working field, with room above it for words. In metres. */
const FIELD: RoomPart = { left: -0.66, right: 0.66, bottom: 0.82, top: 1.62 };
const BESIDE_M = 0.16;
/** More room above, where the legend lies. */
const ABOVE_M = 0.24;

/** Over the face, where the legend lies, and beside table and hands of an operator who puts on a gown. */
const OVER_FACE_M = 0.6;
const GOWN_ASIDE_M = 0.2;
const REACH_M = 0.8;

/** The part of the room that shows the place of the work and all places of a chain; without a chain that place alone. Null is a scenario that is not known yet. */
export function partOf(links: readonly ChainLink[], scenario: Scenario | null): RoomPart {
  const base = scenario && gownsFirst(scenario) ? gowning(scenario) : FIELD;
  const places = links.flatMap(({ x, y }) => (x === null || y === null ? [] : [{ x, y }]));
  return {
    left: Math.min(base.left, ...places.map(({ x }) => x - BESIDE_M)),
    right: Math.max(base.right, ...places.map(({ x }) => x + BESIDE_M)),
    bottom: Math.min(base.bottom, ...places.map(({ y }) => y - BESIDE_M)),
    top: Math.max(base.top, ...places.map(({ y }) => y + ABOVE_M)),
  };
}

/** From the gown table to beside the operator, and over the field where the run goes on there. */
function gowning({ gown, operator, followedBy }: Scenario): RoomPart {
  const half = gown.table.widthM / 2 + GOWN_ASIDE_M;
  const field = followedBy.length > 0 ? [FIELD.left, FIELD.right] : [];
  return {
    left: Math.min(gown.table.xM - half, gown.standXM - REACH_M, ...field),
    right: Math.max(gown.table.xM + half, gown.standXM + REACH_M, ...field),
    bottom: 0,
    top: operator.faceM + OVER_FACE_M,
  };
}
