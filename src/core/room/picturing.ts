import { SIDES, type Side } from '../base/side.ts';
import { armOf } from './driveHands.ts';
import { HAND } from './handShape.ts';
import type { HandState } from './handState.ts';
import { THING_SHAPES } from './itemShapes.ts';
import { levelAt } from './level.ts';
import type { HandPicture, HandPose, ItemPicture, RoomPicture, StrandPicture, SurfaceMark } from './picture.ts';
import type { Scene } from './scene.ts';
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
}

const LEVEL_SAMPLES = 61;

/** Copies one instant out of the room. */
export function takePicture(scene: Scene, sight: Sight): RoomPicture {
  const { layout, scenario } = scene;
  const { surfaces, humpX, humpY } = sight;
  const skinX = Float64Array.from(layout.skin, ([x]) => x + humpX);
  const skinY = Float64Array.from(layout.skin, ([, y]) => y + humpY);
  const levelX = new Float64Array(LEVEL_SAMPLES);
  const levelY = new Float64Array(LEVEL_SAMPLES);
  for (let k = 0; k < LEVEL_SAMPLES; k++) {
    levelX[k] = layout.crest.right.x - 0.2 + ((layout.crest.left.x - layout.crest.right.x + 0.4) * k) / (LEVEL_SAMPLES - 1);
    levelY[k] = levelAt(scene, humpX, levelX[k]!);
  }
  const end = scene.world.strandStart(scene.cord) + scene.world.strandSize(scene.cord) - 1;
  const slot = surfaces.slots;
  const at = (k: number): string => surfaces.upper[k]!;
  return {
    step: sight.step, scenario, torsoX: sight.torsoX,
    hands: { right: handPicture(scene, sight, 'right'), left: handPicture(scene, sight, 'left') },
    strands: strandPictures(scene, surfaces),
    items: itemPictures(scene, sight),
    patientOutline: layout.hump.map(([x, y]) => [x + humpX, y + humpY] as const),
    skinX, skinY,
    skinSurfaces: surfaces.upper.slice(slot.skin, slot.skin + layout.skin.length - 1),
    gelOnSite: sight.gelOnSite,
    outletX: scene.world.x[end]!, outletY: scene.world.y[end]!,
    levelX, levelY,
    fixed: {
      'rail.left': at(slot.rail.left), 'rail.right': at(slot.rail.right), pole: at(slot.pole), machine: at(slot.machine), bed: at(slot.bed),
      floor: at(slot.floor), kitTable: at(slot.kitTable), tableEdge: at(slot.tableEdge), bin: at(slot.bin), face: at(slot.face),
    },
    marks: sight.marks,
  };
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

function heldId(scene: Scene, hand: HandState): string | null {
  if (!hand.hold) return null;
  return hand.hold.kind === 'thing' ? scene.things[hand.hold.thing]!.id : hand.hold.strand;
}

function poseOf(scene: Scene, hand: HandState): HandPose {
  if (hand.hold?.kind === 'thing') {
    const { kind } = scene.things[hand.hold.thing]!;
    if (kind === 'probe') return 'probe';
    return kind === 'syringe' || kind === 'needleSyringe' ? 'syringe' : 'pinch';
  }
  return hand.closed ? 'pinch' : 'open';
}

function strandPictures(scene: Scene, surfaces: Surfaces): StrandPicture[] {
  const { world } = scene;
  const one = (id: StrandPicture['id'], strand: number, slot: number): StrandPicture => {
    const start = world.strandStart(strand);
    const size = world.strandSize(strand);
    const glued: boolean[] = [];
    if (id !== 'cord') for (let i = start; i < start + size; i++) glued.push(world.isGlued(i));
    return { id, x: world.x.slice(start, start + size), y: world.y.slice(start, start + size), surfaces: surfaces.upper.slice(slot, slot + size - 1), glued };
  };
  return [
    ...(['right', 'left'] as const).map((side) => one(`drape.${side}`, scene.drapes[side], surfaces.slots.drape[side])),
    one('cord', scene.cord, surfaces.slots.cord),
  ];
}

function itemPictures(scene: Scene, sight: Sight): ItemPicture[] {
  const { world } = scene;
  return scene.things.map(({ id, kind, body }, k) => {
    const { solid, needle } = sight.surfaces.slots.thing[k]!;
    return {
      id, kind, x: world.bodyX[body]!, y: world.bodyY[body]!, c: world.bodyC[body]!, s: world.bodyS[body]!,
      surfaces: needle >= 0 ? [sight.surfaces.upper[solid]!, sight.surfaces.upper[needle]!] : [sight.surfaces.upper[solid]!],
      heldBy: SIDES.find((side) => holderOf(sight.hands, k) === side) ?? null, gone: sight.gone[k]!, used: sight.used[k]!,
    };
  });
}
