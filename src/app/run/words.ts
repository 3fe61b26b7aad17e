import type { AnswerId, RemedyId, RequestId } from '../../core/commands/command.ts';
import type { TaskId } from '../../core/procedure/observation.ts';
import type { ItemPicture } from '../../core/room/picture.ts';

/** Short names of remedies, as on their buttons. */
export const REMEDY_WORDS: Readonly<Record<RemedyId, string>> = {
  coverDrape: 'Cover the drape',
  changeGlove: 'Change a glove',
  changeGownAndGloves: 'Gown and gloves',
  newSheath: 'New sheath',
  replaceItem: 'Replace an item',
  prepAndDrape: 'Prep and drape',
};

/** Remedies said in full, for reports and screen readers. */
export const REMEDY_SENTENCES: Readonly<Record<RemedyId, string>> = {
  coverDrape: 'covered the drape',
  changeGlove: 'changed a glove',
  changeGownAndGloves: 'changed gown and gloves',
  newSheath: 'put on a new probe sheath',
  replaceItem: 'replaced an item',
  prepAndDrape: 'prepared the skin and draped again',
};

/** Remedies as advice: "change the glove". */
export const REMEDY_ADVICE: Readonly<Record<RemedyId, string>> = {
  coverDrape: 'cover the drape',
  changeGlove: 'change the glove',
  changeGownAndGloves: 'change gown and gloves',
  newSheath: 'put on a new sheath',
  replaceItem: 'replace the item',
  prepAndDrape: 'prepare and drape again',
};

const BOTH_EMPTY = 'Both hands empty, still and clear of the field.';

/** What a remedy waits for. */
export const WAITING_WORDS: Readonly<Record<RemedyId, string>> = {
  coverDrape: BOTH_EMPTY,
  changeGlove: 'That hand empty, still and clear of the field.',
  changeGownAndGloves: BOTH_EMPTY,
  newSheath: BOTH_EMPTY,
  replaceItem: 'Both hands still and clear of the field.',
  prepAndDrape: BOTH_EMPTY,
};

export const REQUEST_WORDS: Readonly<Record<RequestId, string>> = {
  takeCord: 'Hold the cord',
  giveSlack: 'Give slack',
  letGo: 'Let go',
  stop: 'Stop',
  wipeFace: 'Wipe my face',
  takeAway: 'Take this away',
  bringProbe: 'Bring the probe',
  lower: 'Lower the probe',
  pullTail: 'Pull the tail',
  openPacket: 'Open a packet',
  offerPacket: 'Offer an item',
  bedUp: 'Raise the bed',
  bedDown: 'Lower the bed',
  tieBack: 'Tie the back',
  takeCard: 'Take the card',
};

/** Requests as advice. */
export const REQUEST_ADVICE: Readonly<Record<RequestId, string>> = {
  takeCord: 'ask the assistant to hold the cord',
  giveSlack: 'ask the assistant for slack',
  letGo: 'ask the assistant to let go',
  stop: 'tell the assistant to stop',
  wipeFace: 'ask the assistant to wipe your face',
  takeAway: 'ask the assistant to take it away',
  bringProbe: 'ask the assistant for the probe',
  lower: 'ask the assistant to lower the probe',
  pullTail: 'ask the assistant to pull the tail of the sheath',
  openPacket: 'ask the assistant to open a packet',
  offerPacket: 'ask the assistant to offer an item',
  bedUp: 'ask the assistant to raise the bed',
  bedDown: 'ask the assistant to lower the bed',
  tieBack: 'ask the assistant to tie the gown at the back',
  takeCard: 'ask the assistant to take the tie card',
};

/** Answers to an assistant who speaks up, as on their buttons. */
export const ANSWER_WORDS: Readonly<Record<AnswerId, string>> = {
  stop: 'Thank you, I stop',
  fine: 'It is fine',
};

/** Tasks in a word or two, for the row in the bar. */
export const TASK_WORDS: Readonly<Record<TaskId, string>> = {
  opened: 'gown',
  armsIn: 'arms in',
  tied: 'tied',
  firstGlove: 'glove',
  secondGlove: 'glove',
  turned: 'outer tie',
  waited: 'wait',
  gelInside: 'gel inside',
  probeTaken: 'take probe',
  covered: 'cover',
  airOut: 'air out',
  banded: 'bands',
  laidDown: 'lay down',
  gel: 'gel',
  view: 'steady view',
  park: 'park',
  anaesthetic: 'numb',
  ready: 'needle',
  rubbish: 'clear up',
};

/** Tasks said in full, for the report. */
export const TASK_SENTENCES: Readonly<Record<TaskId, string>> = {
  opened: 'Gown lifted and fallen open',
  armsIn: 'Both arms in, hands inside the cuffs',
  tied: 'Back tied by the assistant',
  firstGlove: 'First glove on',
  secondGlove: 'Second glove on',
  turned: 'Outer tie passed and tied',
  waited: 'Waited with hands together above the waist',
  gelInside: 'Sterile gel inside the sheath',
  probeTaken: 'Probe taken through the film',
  covered: 'Cord covered',
  airOut: 'Air out from under the face',
  banded: 'Two bands on the sheath',
  laidDown: 'Sheathed probe laid on the field',
  gel: 'Gel on the site',
  view: 'Steady view with the probe',
  park: 'Probe parked on the field',
  anaesthetic: 'Local anaesthetic given',
  ready: 'Probe and needle at the site together',
  rubbish: 'Rubbish in the bin',
};

export const THING_WORDS: Readonly<Record<ItemPicture['kind'], string>> = {
  probe: 'probe',
  sheathRoll: 'sheath',
  gelPacket: 'gel packet',
  syringe: 'syringe',
  needleSyringe: 'needle and syringe',
  gauze: 'gauze',
  band: 'band',
  gelBottle: 'gel bottle',
  gownPacket: 'folded gown',
  glove: 'glove',
  tieCard: 'tie card',
};
