import type { ItemPicture, RoomPicture } from '../../../core/room/picture.ts';

export type Align = 'left' | 'right' | 'centre';
/** Where the words stand seen from the point they name, in CSS pixels (y down), and how they stand there. */
export type Offset = readonly [dx: number, dy: number, align: Align];

/** A name in the room: the point that it names, in metres, and the places for its words, best first. */
export interface LabelPlace {
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly offsets: readonly Offset[];
  /** The leader ends so far from the point, where a sign stands there, without a dot (CSS pixels). */
  readonly clearPx?: number;
}

const ABOVE: readonly Offset[] = [[0, -34, 'centre'], [0, -58, 'centre']];
const LEFT: readonly Offset[] = [[-44, 0, 'right'], [-44, 26, 'right'], [-44, -26, 'right']];
const RIGHT: readonly Offset[] = [[44, 0, 'left'], [44, 26, 'left'], [44, -26, 'left']];

/** Half the width of the assistant's body with its arms (m). */
const BODY_HALF_M = 0.24;

type Add = (words: string, x: number, y: number, ...offsets: (readonly Offset[])[]) => void;

/** What is named, most useful first. Of things of one kind the first one bears the name. */
export function labelPlaces(picture: RoomPicture): LabelPlace[] {
  const { room, operator } = picture.scenario;
  const places: LabelPlace[] = [];
  const add: Add = (words, x, y, ...offsets) => {
    if (!places.some((place) => place.words === words)) places.push({ words, x, y, offsets: offsets.flat() });
  };
  const site = siteOf(picture);
  if (site !== null) add('site', site[0] - 0.03, site[1], [[-150, 22, 'right'], [-170, 40, 'right'], [-120, -40, 'right'], [150, 22, 'left']]);
  addCord(picture, add);
  for (const item of picture.items) if (!item.gone && !isHidden(item, picture)) addItem(item, add);
  const gloves = picture.items.filter(({ kind, gone, heldBy }) => kind === 'glove' && !gone && heldBy === null);
  if (gloves.length > 0) add(gloves.length > 1 ? 'gloves' : 'glove', gloves[0]!.x, gloves[0]!.y - 0.01, [[0, 44, 'centre'], [0, 62, 'centre'], [60, -50, 'left'], [-60, -50, 'right']]);
  const pocket = picture.strands.find(({ id }) => id === 'pocket');
  if (pocket !== undefined) {
    const k = Math.round(pocket.x.length * 0.64);
    add('sheath', pocket.x[k]!, pocket.y[k]!, [[60, 40, 'left'], [60, -10, 'left'], [60, 80, 'left'], [-150, 40, 'right'], [-150, 90, 'right']]);
  }
  add('rail', -room.rails.xM, room.bed.mattressTopM + picture.bedUpM + 0.04, LEFT, RIGHT);
  add('pole', room.pole.xM, Math.min(room.pole.topM - 0.1, 1.8), RIGHT);
  add('kit table', room.kitTable.xM, room.kitTable.topM - 0.1, [[0, 70, 'centre']], ABOVE);
  add('bin', room.bin.xM, room.bin.rimM, ABOVE);
  add('ultrasound machine', room.machine.xM, 1.42, ABOVE);
  add('assistant', picture.assistant.torsoX, 1.73 - picture.assistant.stoop, ABOVE);
  add('operator', picture.torsoX - 0.08, operator.faceM + 0.08, [[-46, -30, 'right']]);
  return places;
}

function addCord({ strands, scenario, coveredM }: RoomPicture, add: Add): void {
  const cord = strands.find(({ id }) => id === 'cord');
  if (cord === undefined) return;
  const covered = Math.round(coveredM / scenario.cord.linkM);
  const bare = Math.min(cord.x.length - 1, covered + 12);
  const film = Math.round(covered * 0.45);
  if (covered > 4) add('sheathed cord', cord.x[film]!, cord.y[film]!, [[60, -120, 'left'], [60, -70, 'left'], [-60, -110, 'right'], [60, 60, 'left']]);
  if (bare > covered) add('bare cord', cord.x[bare]!, cord.y[bare]!, [[46, -70, 'left'], [34, -24, 'left'], [-34, 20, 'right'], [50, 46, 'left'], [-40, -90, 'right']]);
}

function addItem({ kind, dress, heldBy, x, y, c, s }: ItemPicture, add: Add): void {
  switch (kind) {
    case 'probe': add(dress === null ? 'probe' : 'probe in its sheath', x - c * 0.05, y - s * 0.05, [[-30, -130, 'right'], [40, -120, 'left'], [-60, -70, 'right']]); break;
    case 'sheathRoll': add('sheath', x, y + (heldBy === null ? 0.01 : 0), ABOVE, [[0, 60, 'centre']]); break;
    case 'band': if (heldBy === null) add('band', x, y, ABOVE, [[14, -52, 'left'], [0, 60, 'centre']]); break;
    case 'gownPacket': if (heldBy === null) add('folded gown', x - 0.09, y + 0.02, [[-24, -44, 'centre'], [-24, -66, 'centre']], LEFT); break;
    case 'tieCard': if (heldBy === null) add('tie card', x + 0.05, y, [[54, 22, 'left'], [54, 40, 'left'], [-120, 22, 'right']]); break;
    case 'gelBottle': add('gel bottle', x, y, LEFT, RIGHT); break;
    default:
  }
}

/** A bottle on the machine has no name while the assistant stands before it. */
const isHidden = ({ kind, x, heldBy }: ItemPicture, { assistant }: RoomPicture): boolean => kind === 'gelBottle' && heldBy === null && Math.abs(x - assistant.torsoX) < BODY_HALF_M;

function siteOf({ skinX, skinY, scenario }: RoomPicture): readonly [number, number] | null {
  const wanted = scenario.room.patient.siteXM + ((skinX[0] ?? 0) + (skinX.at(-1) ?? 0)) / 2;
  let best = -1;
  for (let i = 0; i < skinX.length; i++) if (best < 0 || Math.abs(skinX[i]! - wanted) < Math.abs(skinX[best]! - wanted)) best = i;
  return best < 0 ? null : [skinX[best]!, skinY[best]!];
}
