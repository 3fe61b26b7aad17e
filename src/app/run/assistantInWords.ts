import type { AssistantDoing, AssistantPicture } from '../../core/room/picture.ts';

const DOING_WORDS: Readonly<Record<AssistantDoing, string>> = {
  waiting: 'The assistant waits.',
  coming: 'The assistant is coming.',
  reaching: 'The assistant reaches out.',
  holdingCord: 'The assistant holds the cord.',
  wipingFace: 'The assistant wipes your face.',
  takingAway: 'The assistant takes something away.',
  bringingProbe: 'The assistant brings the probe.',
  overMouth: 'The assistant holds the probe over the mouth of the sheath.',
  lowering: 'The assistant lowers the probe.',
  supportingCord: 'The assistant bears the weight of the cord.',
  pullingTail: 'The assistant pulls the tail of the sheath.',
  lettingCordDown: 'The assistant lets the cord down.',
  openingPacket: 'The assistant opens a packet.',
  offeringItem: 'The assistant holds an item out in its opened packet.',
  movingBed: 'The assistant moves the bed.',
  tyingGown: 'The assistant ties your gown at the back.',
  holdingCard: 'The assistant holds the tie card while you turn.',
  pullingGlove: 'The assistant pulls your glove off by its cuff.',
  openingGlove: 'The assistant opens a new glove on the gown table.',
  leaving: 'The assistant takes the hand back.',
  stopped: 'The assistant stands still.',
};

/** What the assistant is at, as one sentence. */
export const assistantInWords = ({ doing }: Pick<AssistantPicture, 'doing'>): string => DOING_WORDS[doing];
