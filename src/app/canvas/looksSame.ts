import type { AssistantPicture, ItemPicture, ProbeDress, RoomPicture, StrandPicture } from '../../core/room/picture.ts';

/** Whether two pictures would be drawn alike; what lies at rest stays exactly where it is. */
export function looksSame(a: RoomPicture, b: RoomPicture): boolean {
  if (a === b) return true;
  return a.scenario === b.scenario && a.torsoX === b.torsoX && a.gelOnSite === b.gelOnSite && a.bedUpM === b.bedUpM && a.outletX === b.outletX && a.outletY === b.outletY
    && a.coveredM === b.coveredM && a.foldedM === b.foldedM && a.gelInSheathMl === b.gelInSheathMl && sameRow(a.fingersInFold, b.fingersInFold)
    && sameRow(a.skinX, b.skinX) && sameRow(a.skinY, b.skinY) && sameRow(a.levelY, b.levelY) && sameRow(a.skinSurfaces, b.skinSurfaces)
    && sameFields(a.hands.left, b.hands.left) && sameFields(a.hands.right, b.hands.right)
    && sameAssistant(a.assistant, b.assistant)
    && a.items.length === b.items.length && a.items.every((item, i) => sameItem(item, b.items[i]!))
    && a.strands.length === b.strands.length && a.strands.every((strand, i) => sameStrand(strand, b.strands[i]!))
    && a.gown === b.gown && sameMarks(a.marks, b.marks);
}

const sameStrand = (a: StrandPicture, b: StrandPicture): boolean => a === b || (a.id === b.id && sameRow(a.x, b.x) && sameRow(a.y, b.y) && sameRow(a.surfaces, b.surfaces));

/** What the assistant is at is not drawn. */
const sameAssistant = (a: AssistantPicture, b: AssistantPicture): boolean =>
  a === b || (a.torsoX === b.torsoX && a.stoop === b.stoop && a.waits === b.waits && sameFields(a.hands.left, b.hands.left) && sameFields(a.hands.right, b.hands.right));

const sameItem = (a: ItemPicture, b: ItemPicture): boolean => a === b || (sameDress(a.dress, b.dress) && sameFields({ ...a, dress: null }, { ...b, dress: null }));

function sameDress(a: ProbeDress | null, b: ProbeDress | null): boolean {
  if (a === null || b === null || a === b) return a === b;
  return a.torn === b.torn && sameRow(a.bands, b.bands) && a.bubbles.length === b.bubbles.length && a.bubbles.every((bubble, i) => sameFields(bubble, b.bubbles[i]!));
}

function sameRow(a: ArrayLike<number | string>, b: ArrayLike<number | string>): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Compares the fields of plain objects, and what is in them one level down. */
function sameFields<Fields extends object>(a: Fields, b: Fields): boolean {
  if (a === b) return true;
  for (const name in a) {
    const [one, other] = [a[name] as unknown, b[name] as unknown];
    if (one === other) continue;
    if (typeof one !== 'object' || one === null || typeof other !== 'object' || other === null || !sameRow(Object.values(one), Object.values(other))) return false;
  }
  return true;
}

function sameMarks(a: RoomPicture['marks'], b: RoomPicture['marks']): boolean {
  if (a === b) return true;
  if (a.size !== b.size) return false;
  for (const [surface, mark] of a) if (b.get(surface) !== mark) return false;
  return true;
}
