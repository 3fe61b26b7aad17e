import type { WhatIfOutcome } from '../../../core/debrief/whatIfTypes.ts';
import type { RoomPicture, SurfaceMark } from '../../../core/room/picture.ts';

/** A thing that an inserted remedy has renewed is named like the old one with this after it. */
const RENEWED = '~';

/**
 * Pictures of the run as they would look under a what-if: what it spares is shown as it came into the room, what it spoils besides as
 * unsterile from then on. All movements stay as they were.
 * @param initialOf state in which a surface came into the room
 */
export function whatIfMarks(outcome: WhatIfOutcome, initialOf: (surface: string) => SurfaceMark): (picture: RoomPicture) => RoomPicture {
  const plain = new Map<string, number>();
  const renewed = new Map<string, number>();
  for (const { spread } of outcome.breaks) {
    for (const { surface, step } of spread) {
      const into = surface.includes(RENEWED) ? renewed : plain;
      const id = surface.replace(RENEWED, '');
      into.set(id, Math.min(step, into.get(id) ?? Infinity));
    }
  }
  const { change } = outcome;
  const renewedAt = (surface: string): number => (change.kind === 'remedy' && change.things.some((thing) => surface.startsWith(`${thing}:`) || surface === thing) ? change.step : Infinity);
  const fared = new Set([...outcome.spared, ...outcome.stillSpoiled, ...outcome.newlySpoiled].map(({ surface }) => surface));
  const markOf = (surface: string, step: number): SurfaceMark => {
    const spoiled = step > renewedAt(surface) ? renewed.get(surface) : plain.get(surface);
    return spoiled !== undefined && spoiled <= step ? 'became' : initialOf(surface);
  };
  return (picture) => {
    const marks = new Map(picture.marks);
    for (const surface of fared) {
      const was = marks.get(surface);
      if (was === undefined) continue;
      const now = markOf(surface, picture.step);
      if (was === 'became' || now === 'became') marks.set(surface, now);
    }
    return { ...picture, marks };
  };
}
