import type { RemedyId } from '../commands/command.ts';
import type { TaskId } from '../procedure/observation.ts';
import type { ItemKind } from '../scenario/schema.ts';
import type { ClearanceThing } from '../room/clearanceThings.ts';

/** Words of the score, as a teacher says them beside the bed. */
export const TASK_NAMES: Readonly<Record<TaskId, string>> = {
  opened: 'the gown lifted and fallen open',
  armsIn: 'both arms in the sleeves',
  tied: 'the back tied',
  firstGlove: 'the first glove',
  secondGlove: 'the second glove',
  turned: 'the outer tie passed and tied',
  waited: 'waiting with hands together above the waist',
  gelInside: 'sterile gel inside the sheath',
  probeTaken: 'the probe taken through the film',
  covered: 'the cord covered',
  airOut: 'no air under the face of the probe',
  banded: 'two bands on the sheath',
  laidDown: 'the sheathed probe laid on the field',
  gel: 'gel on the site',
  view: 'a steady view',
  park: 'the probe parked so that it stays',
  anaesthetic: 'local anaesthetic',
  ready: 'probe and needle at the site together',
  rubbish: 'rubbish in the bin',
};

export const REMEDY_DONE: Readonly<Record<RemedyId, string>> = {
  coverDrape: 'drape covered',
  changeGlove: 'glove changed',
  changeGownAndGloves: 'gown and gloves changed',
  newSheath: 'new sheath',
  replaceItem: 'item replaced',
  prepAndDrape: 'prepared and draped again',
};

export const ITEM_NAMES: Readonly<Record<ItemKind | 'probe', string>> = {
  probe: 'probe',
  gelPacket: 'gel packet',
  syringe: 'anaesthetic syringe',
  needleSyringe: 'needle syringe',
  gauze: 'gauze',
  band: 'band',
  gelBottle: 'gel bottle',
};

export const CLEARANCE_NAMES: Readonly<Record<ClearanceThing, string>> = {
  'rail.left': 'the left bed rail',
  'rail.right': 'the right bed rail',
  'edge.left': 'the edge of the drape, left side',
  'edge.right': 'the edge of the drape, right side',
  bed: 'the bare bed',
  pole: 'the pole',
  machine: 'the ultrasound machine',
  tableEdge: 'the side of the kit table',
  bin: 'the bin',
  floor: 'the floor',
  bareCord: 'the bare cord or the open end of the sheath',
  patientSkin: 'skin that is not prepared',
  face: 'your face',
};

/** "1 break", "3 breaks". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** "a", "a and b", "a, b and c". */
export const listed = (words: readonly string[]): string => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`);

/** Seconds as minutes and seconds, "3:07". */
export function minutesText(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
