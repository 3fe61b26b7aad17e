import type { RoomPicture } from '../../../core/room/picture.ts';

export type Align = 'left' | 'right' | 'centre';
/** Where the words stand seen from the point they name, in CSS pixels (y down), and how they stand there. */
export type Offset = readonly [dx: number, dy: number, align: Align];

/** A name in the room: the point that it names, in metres, and the places for its words, best first. */
export interface LabelPlace {
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly offsets: readonly Offset[];
}

const ABOVE: readonly Offset[] = [[0, -34, 'centre'], [0, -58, 'centre']];
const LEFT: readonly Offset[] = [[-44, 0, 'right'], [-44, 26, 'right'], [-44, -26, 'right']];
const RIGHT: readonly Offset[] = [[44, 0, 'left'], [44, 26, 'left'], [44, -26, 'left']];

/** What is named, most useful first. */
export function labelPlaces(picture: RoomPicture): LabelPlace[] {
  const { room, operator, cord: cordSpec } = picture.scenario;
  const places: LabelPlace[] = [];
  const add = (words: string, x: number, y: number, ...offsets: (readonly Offset[])[]): void => { places.push({ words, x, y, offsets: offsets.flat() }); };
  const site = siteOf(picture);
  if (site !== null) add('site', site[0] - 0.03, site[1], [[-150, 22, 'right'], [-170, 40, 'right'], [-120, -40, 'right'], [150, 22, 'left']]);
  const cord = picture.strands.find(({ id }) => id === 'cord');
  if (cord !== undefined) {
    const covered = Math.round(cordSpec.coveredM / cordSpec.linkM);
    const bare = Math.min(cord.x.length - 1, covered + 12);
    const film = Math.round(covered * 0.45);
    if (covered > 4) add('sheathed cord', cord.x[film]!, cord.y[film]!, [[60, -120, 'left'], [60, -70, 'left'], [-60, -110, 'right'], [60, 60, 'left']]);
    if (bare > covered) add('bare cord', cord.x[bare]!, cord.y[bare]!, [[46, -70, 'left'], [34, -24, 'left'], [-34, 20, 'right'], [50, 46, 'left'], [-40, -90, 'right']]);
  }
  for (const item of picture.items) {
    if (item.kind === 'probe' && !item.gone) add('probe in its sheath', item.x - item.c * 0.05, item.y - item.s * 0.05, [[-30, -130, 'right'], [40, -120, 'left'], [-60, -70, 'right']]);
  }
  add('rail', -room.rails.xM, room.bed.mattressTopM + 0.04, LEFT, RIGHT);
  add('pole', room.pole.xM, Math.min(room.pole.topM - 0.1, 1.8), RIGHT);
  add('kit table', room.kitTable.xM, room.kitTable.topM - 0.1, [[0, 70, 'centre']], ABOVE);
  add('bin', room.bin.xM, room.bin.rimM, ABOVE);
  add('ultrasound machine', room.machine.xM, 1.42, ABOVE);
  add('assistant', picture.assistant.torsoX, 1.73 - picture.assistant.stoop, ABOVE);
  add('operator', picture.torsoX - 0.08, operator.faceM + 0.08, [[-46, -30, 'right']]);
  return places;
}

function siteOf({ skinX, skinY, scenario }: RoomPicture): readonly [number, number] | null {
  const wanted = scenario.room.patient.siteXM + ((skinX[0] ?? 0) + (skinX.at(-1) ?? 0)) / 2;
  let best = -1;
  for (let i = 0; i < skinX.length; i++) if (best < 0 || Math.abs(skinX[i]! - wanted) < Math.abs(skinX[best]! - wanted)) best = i;
  return best < 0 ? null : [skinX[best]!, skinY[best]!];
}
