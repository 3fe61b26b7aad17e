import { SIDES, type Side } from '../base/side.ts';
import { armOf } from './driveHands.ts';
import type { AssistantLook } from './assistant/assistantBody.ts';
import { sleeveLeftM } from './gown/gownFacts.ts';
import type { Gown } from './gown/Gown.ts';
import { gownPicture } from './gown/gownPicture.ts';
import { HAND } from './handShape.ts';
import type { HandState } from './handState.ts';
import { THING_SHAPES } from './itemShapes.ts';
import { keptFields, keptList, keptRow } from './keeping.ts';
import { levelsAt } from './level.ts';
import type { AssistantPicture, HandPicture, HandPose, ItemPicture, ProbeDress, RoomPicture, StrandPicture, SurfaceMark } from './picture.ts';
import type { Scene } from './scene.ts';
import type { Sheath } from './sheath/Sheath.ts';
import type { Surfaces } from './surfaces.ts';
import { holderOf } from './work.ts';

/** What the picture needs to know beyond the scene. */
export interface Sight {
  readonly step: number;
  readonly hands: Readonly<Record<Side, HandState>>;
  readonly torsoX: number;
  readonly humpX: number;
  readonly humpY: number;
  readonly gone: readonly boolean[];
  readonly used: readonly number[];
  readonly gelOnSite: number;
  readonly surfaces: Surfaces;
  readonly marks: ReadonlyMap<string, SurfaceMark>;
  readonly assistant: AssistantLook;
  readonly sheath: Sheath | null;
  readonly gown: Gown | null;
}

const LEVEL_SAMPLES = 61;

/**
 * Copies one instant out of the room. What is as in `before`, a picture of the same room, is taken over from it, object by object:
 * whoever blends, compares or sends pictures sees at once that it is the same.
 */
export function takePicture(scene: Scene, sight: Sight, before: RoomPicture | null): RoomPicture {
  const { layout, scenario, world, cord } = scene;
  const { surfaces } = sight;
  const end = world.strandStart(cord) + world.strandSize(cord) - 1;
  const slot = surfaces.slots;
  const at = (k: number): string => surfaces.upper[k]!;
  const strands = strandPictures(scene, surfaces, before);
  const patient = patientPicture(scene, sight, before);
  return {
    step: sight.step, scenario, torsoX: sight.torsoX,
    hands: { right: handPicture(scene, sight, 'right'), left: handPicture(scene, sight, 'left') },
    assistant: assistantPicture(sight.assistant, before),
    strands,
    items: itemPictures(scene, sight, before),
    bedUpM: layout.bedUpM,
    ...patient,
    skinSurfaces: keptList(surfaces.upper, slot.skin, layout.skin.length - 1, before?.skinSurfaces),
    gelOnSite: sight.gelOnSite,
    coveredM: scene.cover.coveredM, gelInSheathMl: sight.sheath?.gelMl ?? 0, foldedM: sight.sheath?.foldedM ?? 0,
    fingersInFold: keptList(SIDES.filter((side) => scene.cover.folded[side]), 0, SIDES.filter((side) => scene.cover.folded[side]).length, before?.fingersInFold),
    gown: gownPicture(scene, surfaces, sight.gown, before?.gown ?? null),
    outletX: world.x[end]!, outletY: world.y[end]!,
    ...levelPicture(scene, sight, before && patient.skinX === before.skinX && strands[0] === before.strands[0] && strands[1] === before.strands[1] ? before : null),
    fixed: keptFields({
      'rail.left': at(slot.rail.left), 'rail.right': at(slot.rail.right), pole: at(slot.pole), machine: at(slot.machine), bed: at(slot.bed),
      floor: at(slot.floor), kitTable: at(slot.kitTable), tableEdge: at(slot.tableEdge), bin: at(slot.bin), face: at(slot.face),
    }, before?.fixed),
    marks: sight.marks,
  };
}

function patientPicture({ layout }: Scene, { humpX, humpY }: Sight, before: RoomPicture | null): Pick<RoomPicture, 'patientOutline' | 'skinX' | 'skinY'> {
  const [x, y] = layout.skin[0]!;
  if (before?.skinX[0] === x + humpX && before.skinY[0] === y + humpY) return { patientOutline: before.patientOutline, skinX: before.skinX, skinY: before.skinY };
  return {
    patientOutline: layout.hump.map(([px, py]) => [px + humpX, py + humpY] as const),
    skinX: Float64Array.from(layout.skin, ([px]) => px + humpX),
    skinY: Float64Array.from(layout.skin, ([, py]) => py + humpY),
  };
}

/** `same` is a picture with patient and sheets as they are now, where there is one. */
function levelPicture(scene: Scene, { humpX }: Sight, same: RoomPicture | null): Pick<RoomPicture, 'levelX' | 'levelY'> {
  if (same) return { levelX: same.levelX, levelY: same.levelY };
  const { left, right } = scene.layout.crest;
  const levelX = Float64Array.from({ length: LEVEL_SAMPLES }, (_, k) => right.x - 0.2 + ((left.x - right.x + 0.4) * k) / (LEVEL_SAMPLES - 1));
  return { levelX, levelY: levelsAt(scene, humpX, levelX) };
}

function assistantPicture({ doing, torsoX, stoop, waits, hands }: AssistantLook, before: RoomPicture | null): AssistantPicture {
  const was = before?.assistant;
  return keptFields({ doing, torsoX, stoop, waits, hands: keptFields({ right: keptFields(hands.right, was?.hands.right), left: keptFields(hands.left, was?.hands.left) }, was?.hands) }, was);
}

function handPicture(scene: Scene, sight: Sight, side: Side): HandPicture {
  const { world } = scene;
  const b = scene.hands[side];
  const hand = sight.hands[side];
  const { hand: handSlots, sleeve } = sight.surfaces.slots;
  const at = (k: number): string => sight.surfaces.upper[k]!;
  return {
    side, pose: poseOf(scene, hand), x: world.bodyX[b]!, y: world.bodyY[b]!, c: world.bodyC[b]!, s: world.bodyS[b]!,
    ...armOf(scene, side, sight.torsoX),
    gripAlong: gripAlong(scene, hand), holds: heldId(scene, hand), targetX: hand.targetX, targetY: hand.targetY,
    surfaces: {
      fingers: at(handSlots[side].fingers), palm: at(handSlots[side].palm), back: at(handSlots[side].back), cuff: at(handSlots[side].cuff),
      lowerSleeve: at(sleeve[side].lowerSleeve), upperSleeve: at(sleeve[side].upperSleeve), outerSleeve: at(sleeve[side].outerSleeve),
    },
  };
}

/** A thing moves from the fingertips that took it to where it is held. */
function gripAlong(scene: Scene, { hold }: HandState): number {
  if (hold?.kind !== 'thing') return HAND.gripU;
  return HAND.gripU + (THING_SHAPES[scene.things[hold.thing]!.kind].holdAlong - HAND.gripU) * hold.settled;
}

/** What is held where it is no thing and no strand. */
const HELD_IDS = { rim: 'pocket', film: 'film', gown: 'gown', gloveCuff: 'gloveCuff' } as const;

function heldId(scene: Scene, hand: HandState): string | null {
  if (!hand.hold) return null;
  if (hand.hold.kind === 'thing') return scene.things[hand.hold.thing]!.id;
  if (hand.hold.kind === 'node') return hand.hold.strand;
  return HELD_IDS[hand.hold.kind];
}

function poseOf(scene: Scene, hand: HandState): HandPose {
  if (hand.hold?.kind === 'thing') {
    const { kind } = scene.things[hand.hold.thing]!;
    if (kind === 'probe') return 'probe';
    return kind === 'syringe' || kind === 'needleSyringe' ? 'syringe' : 'pinch';
  }
  return hand.closed ? 'pinch' : 'open';
}

/** The drapes of both sides, the cord, then the sheath and the gown while they are open. */
function strandPictures(scene: Scene, surfaces: Surfaces, before: RoomPicture | null): StrandPicture[] {
  const { world } = scene;
  const one = (id: StrandPicture['id'], strand: number, slot: number, was: StrandPicture | undefined): StrandPicture => {
    const start = world.strandStart(strand);
    const size = world.strandSize(strand);
    const glued: boolean[] = [];
    if (id === 'drape.right' || id === 'drape.left') for (let i = start; i < start + size; i++) glued.push(world.isGlued(i));
    const x = keptRow(world.x, start, size, was?.x);
    const y = keptRow(world.y, start, size, was?.y);
    return keptFields({ id, x, y, surfaces: keptList(surfaces.upper, slot, size - 1, was?.surfaces), glued: keptList(glued, 0, glued.length, was?.glued) }, was);
  };
  const { drape, cord, gown } = surfaces.slots;
  const known = (id: StrandPicture['id']): StrandPicture | undefined => before?.strands.find((strand) => strand.id === id);
  return [
    one('drape.right', scene.drapes.right, drape.right, before?.strands[0]),
    one('drape.left', scene.drapes.left, drape.left, before?.strands[1]),
    one('cord', scene.cord, cord, before?.strands[2]),
    ...(scene.sheath && scene.cover.open ? [one('pocket', scene.sheath.pocket, surfaces.slots.pocket, known('pocket'))] : []),
    ...(gown && scene.dress!.hanging ? [one('gown.right', scene.gown!.edges.right, gown.edges.right, known('gown.right')), one('gown.left', scene.gown!.edges.left, gown.edges.left, known('gown.left'))] : []),
    ...SIDES.filter((side) => gown && sleeveLeftM(scene, side) > 0).map((side) => one(`sleeve.${side}`, scene.gown!.sleeves[side], gown!.sleeves[side], known(`sleeve.${side}`))),
  ];
}

/** The film on a probe that a perfect operator has sheathed: bands behind the head and where the cord begins. */
const LOADED: ProbeDress = { bands: [0.024, 0.124], bubbles: [], torn: false };

/** The dress as it was, where nothing of it has changed. */
function keptDress(dress: ProbeDress | null, was: ProbeDress | null): ProbeDress | null {
  if (!dress || !was) return dress;
  const bubbles = keptList(dress.bubbles.map((bubble, k) => keptFields(bubble, was.bubbles[k])), 0, dress.bubbles.length, was.bubbles);
  return keptFields({ bands: keptList(dress.bands, 0, dress.bands.length, was.bands), bubbles, torn: dress.torn }, was);
}

function itemPictures(scene: Scene, sight: Sight, before: RoomPicture | null): ItemPicture[] {
  const { world } = scene;
  return scene.things.map(({ id, kind, body }, k) => {
    const { solid, needle } = sight.surfaces.slots.thing[k]!;
    const was = before?.items[k];
    const surfaces = needle >= 0 ? [sight.surfaces.upper[solid]!, sight.surfaces.upper[needle]!] : [sight.surfaces.upper[solid]!];
    return keptFields({
      id, kind, x: world.bodyX[body]!, y: world.bodyY[body]!, c: world.bodyC[body]!, s: world.bodyS[body]!,
      surfaces: keptList(surfaces, 0, surfaces.length, was?.surfaces),
      heldBy: SIDES.find((side) => holderOf(sight.hands, k) === side) ?? null, gone: sight.gone[k]!, used: sight.used[k]!, dress: k === 0 ? keptDress(sight.sheath ? sight.sheath.dress : LOADED, was?.dress ?? null) : null,
    }, was);
  });
}
