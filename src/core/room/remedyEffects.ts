import type { RemedyId } from '../commands/command.ts';
import { SIDES, type Side } from '../base/side.ts';
import { bedBack } from './bedHeight.ts';
import { letGo } from './grip.ts';
import { HAND_PARTS } from './handShape.ts';
import { isOverBed } from './layout.ts';
import type { Room } from './room.ts';
import { HELD_AT } from './sheath/inHolder.ts';
import type { Sheath } from './sheath/Sheath.ts';
import { SLEEVE_PARTS } from './surfaces.ts';
import { holderOf } from './work.ts';

/** Carries out a remedy that has taken its time: new surfaces come, the old ones keep their history. Returns the things it answered. */
export function applyRemedy(room: Room, remedy: RemedyId, target: string): string[] {
  const side: Side = target === 'left' ? 'left' : 'right';
  switch (remedy) {
    case 'changeGlove':
      return [newGlove(room, side)];
    case 'changeGownAndGloves':
      return room.gown ? room.gown.startOver() : [newGown(room), ...SIDES.map((s) => newGlove(room, s))];
    case 'replaceItem':
      return [newItem(room, room.scene.things.findIndex(({ id }) => id === target))];
    case 'newSheath':
      return [newSheath(room)];
    case 'coverDrape':
      return [newDrape(room, side)];
    case 'prepAndDrape':
      return prepareAgain(room);
  }
}

function newGlove(room: Room, side: Side): string {
  if (room.gown) return room.gown.freshGlove(side);
  const old = room.surfaces.thingName(`glove.${side}`);
  room.surfaces.newGlove(side);
  for (const part of HAND_PARTS) room.touches.replaced(room.surfaces.slots.hand[side][part]);
  return old;
}

function newGown(room: Room): string {
  const old = room.surfaces.thingName('gown');
  room.surfaces.newGown();
  for (const side of SIDES) for (const part of SLEEVE_PARTS) room.touches.replaced(room.surfaces.slots.sleeve[side][part]);
  return old;
}

/** The assistant hands a new item on to the field, where the first one lay. */
function newItem(room: Room, k: number): string {
  const { id, body } = room.scene.things[k]!;
  const old = room.surfaces.thingName(id);
  const holder = holderOf(room.hands, k);
  if (holder) letGo(room.scene, room.hands[holder], room.sheath, room.gown);
  room.surfaces.newItem(k);
  room.gone[k] = false;
  room.carriedOff[k] = false;
  room.packed[k] = false;
  room.work.used[k] = 0;
  room.scene.world.setBodyEnabled(body, true);
  const { x, y, c, s } = room.laid.things[k]!;
  room.scene.world.teleportBody(body, x, y + bedUnder(room, x) + 0.02, c, s);
  const { solid, needle } = room.surfaces.slots.thing[k]!;
  for (const slot of needle >= 0 ? [solid, needle] : [solid]) {
    room.touches.replaced(slot);
    room.touches.moved(slot);
  }
  return old;
}

/** How far what lies at x has gone up with the bed, in metres. */
const bedUnder = ({ scene: { layout } }: Room, x: number): number => (isOverBed(layout, x) ? layout.bedUpM : 0);

function newSheath(room: Room): string {
  const old = room.surfaces.thingName('sheath');
  if (room.sheath) {
    loadAnew(room, room.sheath);
    return old;
  }
  room.surfaces.newSheath();
  const { slots } = room.surfaces;
  room.touches.replaced(slots.thing[0]!.solid);
  for (let k = 0, links = room.scene.world.strandSize(room.scene.cord) - 1; k < links; k++) room.touches.replaced(slots.cord + k);
  return old;
}

/** A new sheath with its gel and bands on the table; the probe hangs in its holder again. */
function loadAnew(room: Room, sheath: Sheath): void {
  const { scene, laid, touches, surfaces } = room;
  const { world, things } = scene;
  room.assistant.letGoOfCord();
  sheath.startOver();
  const start = world.strandStart(scene.cord);
  world.placeStrand(scene.cord, Array.from({ length: world.strandSize(scene.cord) }, (_, k): readonly [number, number] => [laid.x[start + k]!, laid.y[start + k]!]));
  const { x, y, c, s } = laid.things[0]!;
  world.teleportBody(things[0]!.body, x, y, c, s);
  world.weld(scene.sheath!.holder, things[0]!.body, { relative: HELD_AT });
  const roll = laid.things[scene.sheath!.roll]!;
  world.teleportBody(things[scene.sheath!.roll]!.body, roll.x, roll.y + bedUnder(room, roll.x) + 0.02, roll.c, roll.s);
  for (let slot = surfaces.slots.cord; slot < surfaces.slots.count; slot++) touches.moved(slot);
  things.forEach(({ kind }, k) => {
    if ((kind === 'band' && room.gone[k]) || (kind === 'gelPacket' && room.work.used[k]! > 0)) newItem(room, k);
  });
}

function newDrape(room: Room, side: Side): string {
  const old = room.surfaces.thingName(`drape.${side}`);
  room.surfaces.newDrape(side);
  const first = room.surfaces.slots.drape[side];
  for (let k = 0, links = room.scene.world.strandSize(room.scene.drapes[side]) - 1; k < links; k++) room.touches.replaced(first + k);
  room.drift.relaid(side, room.happenings.humpX);
  return old;
}

/** Skin prepared, drapes laid and the field set out anew, as it was when the run began, on the bed at the height that it had. */
function prepareAgain(room: Room): string[] {
  const { scene, surfaces, laid, happenings } = room;
  const { world } = scene;
  const old = [surfaces.thingName('site')];
  bedBack(scene);
  happenings.lieStill();
  room.assistant.letGoOfCord();
  if (scene.clip) world.teleportBody(scene.clip.body, laid.clip[0], laid.clip[1], 1, 0);
  world.placeNodes(laid.x, laid.y);
  room.clip.close();
  scene.things.forEach(({ body }, k) => {
    const { x, y, c, s } = laid.things[k]!;
    if (!room.gone[k]) world.teleportBody(body, x, y, c, s);
  });
  for (const side of SIDES) scene.glue(side);
  surfaces.newSkin();
  for (let k = 0; k + 1 < scene.layout.skin.length; k++) room.touches.replaced(surfaces.slots.skin + k);
  for (const side of SIDES) old.push(newDrape(room, side));
  room.work.gelOnSite = 0;
  const { skin, bed, rail } = surfaces.slots;
  for (const slot of [bed, rail.left, rail.right]) room.touches.moved(slot);
  for (let slot = skin; slot < surfaces.slots.count; slot++) room.touches.moved(slot);
  return old;
}
