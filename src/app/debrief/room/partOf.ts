import type { RoomPart } from '../../run/stagePort.ts';
import type { ChainLink } from './chainLinks.ts';

/** What is always seen: the working field, with room above it for words. In metres. */
const FIELD: RoomPart = { left: -0.66, right: 0.66, bottom: 0.82, top: 1.62 };
const BESIDE_M = 0.16;
/** More room above, where the legend lies. */
const ABOVE_M = 0.24;

/** The part of the room that shows the field and all places of a chain; without a chain the field alone. */
export function partOf(links: readonly ChainLink[]): RoomPart {
  const places = links.flatMap(({ x, y }) => (x === null || y === null ? [] : [{ x, y }]));
  return {
    left: Math.min(FIELD.left, ...places.map(({ x }) => x - BESIDE_M)),
    right: Math.max(FIELD.right, ...places.map(({ x }) => x + BESIDE_M)),
    bottom: Math.min(FIELD.bottom, ...places.map(({ y }) => y - BESIDE_M)),
    top: Math.max(FIELD.top, ...places.map(({ y }) => y + ABOVE_M)),
  };
}
