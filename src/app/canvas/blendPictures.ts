import type { AssistantHandPicture, AssistantPicture, HandPicture, ItemPicture, Pose, RoomPicture, StrandPicture } from '../../core/room/picture.ts';

const mix = (a: number, b: number, t: number): number => a + (b - a) * t;

/**
 * The instant between two pictures of a room, 0 the previous and 1 the current one; what has no in-between is taken from the current
 * one, and so is what the two share, as the very same object.
 */
export function blendPictures(previous: RoomPicture, current: RoomPicture, t: number): RoomPicture {
  if (t >= 1 || previous === current) return current;
  return {
    ...current,
    torsoX: mix(previous.torsoX, current.torsoX, t),
    hands: { left: blendHand(previous.hands.left, current.hands.left, t), right: blendHand(previous.hands.right, current.hands.right, t) },
    assistant: blendAssistant(previous.assistant, current.assistant, t),
    strands: current.strands.map((strand, i) => blendStrand(previous.strands[i], strand, t)),
    items: current.items.map((item, i) => blendItem(previous.items[i], item, t)),
    bedUpM: mix(previous.bedUpM, current.bedUpM, t),
    patientOutline: blendOutline(previous.patientOutline, current.patientOutline, t),
    skinX: blendRow(previous.skinX, current.skinX, t),
    skinY: blendRow(previous.skinY, current.skinY, t),
    gelOnSite: mix(previous.gelOnSite, current.gelOnSite, t),
    coveredM: mix(previous.coveredM, current.coveredM, t),
    foldedM: mix(previous.foldedM, current.foldedM, t),
    gelInSheathMl: mix(previous.gelInSheathMl, current.gelInSheathMl, t),
    outletX: mix(previous.outletX, current.outletX, t),
    outletY: mix(previous.outletY, current.outletY, t),
    levelX: blendRow(previous.levelX, current.levelX, t),
    levelY: blendRow(previous.levelY, current.levelY, t),
  };
}

function blendRow(previous: Float64Array, current: Float64Array, t: number): Float64Array {
  if (previous === current || previous.length !== current.length) return current;
  return current.map((value, i) => mix(previous[i]!, value, t));
}

function blendOutline(previous: RoomPicture['patientOutline'], current: RoomPicture['patientOutline'], t: number): RoomPicture['patientOutline'] {
  if (previous === current || previous.length !== current.length) return current;
  return current.map(([x, y], i) => [mix(previous[i]![0], x, t), mix(previous[i]![1], y, t)] as const);
}

/** Directions stay unit vectors. */
function blendPose(previous: Pose, current: Pose, t: number): Pose {
  const c = mix(previous.c, current.c, t);
  const s = mix(previous.s, current.s, t);
  const length = Math.hypot(c, s);
  const turned = length > 1e-6 ? { c: c / length, s: s / length } : { c: current.c, s: current.s };
  return { x: mix(previous.x, current.x, t), y: mix(previous.y, current.y, t), ...turned };
}

function blendHand(previous: HandPicture, current: HandPicture, t: number): HandPicture {
  const between = (key: 'shoulderX' | 'shoulderY' | 'elbowX' | 'elbowY' | 'wristX' | 'wristY' | 'gripAlong'): number => mix(previous[key], current[key], t);
  return {
    ...current, ...blendPose(previous, current, t),
    shoulderX: between('shoulderX'), shoulderY: between('shoulderY'), elbowX: between('elbowX'), elbowY: between('elbowY'),
    wristX: between('wristX'), wristY: between('wristY'), gripAlong: between('gripAlong'),
  };
}

function blendAssistant(previous: AssistantPicture, current: AssistantPicture, t: number): AssistantPicture {
  if (previous === current) return current;
  const hand = (was: AssistantHandPicture, now: AssistantHandPicture): AssistantHandPicture => ({
    ...now, ...blendPose(was, now, t), shoulderX: mix(was.shoulderX, now.shoulderX, t), shoulderY: mix(was.shoulderY, now.shoulderY, t),
    elbowX: mix(was.elbowX, now.elbowX, t), elbowY: mix(was.elbowY, now.elbowY, t), wristX: mix(was.wristX, now.wristX, t), wristY: mix(was.wristY, now.wristY, t),
  });
  const { hands } = current;
  return {
    ...current, torsoX: mix(previous.torsoX, current.torsoX, t), stoop: mix(previous.stoop, current.stoop, t),
    hands: { left: hand(previous.hands.left, hands.left), right: hand(previous.hands.right, hands.right) },
  };
}

function blendItem(previous: ItemPicture | undefined, current: ItemPicture, t: number): ItemPicture {
  return previous === undefined || previous === current || previous.gone !== current.gone ? current : { ...current, ...blendPose(previous, current, t) };
}

function blendStrand(previous: StrandPicture | undefined, current: StrandPicture, t: number): StrandPicture {
  return previous?.id !== current.id || previous === current ? current : { ...current, x: blendRow(previous.x, current.x, t), y: blendRow(previous.y, current.y, t) };
}
