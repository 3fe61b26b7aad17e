import type { Side } from '../base/side.ts';
import type { NextHold, ThingToHold } from './nextHold.ts';

interface Words {
  /** Name of the place, for a label in the room. */
  readonly name: string;
  /** What the hand does there. */
  readonly task: string;
}

const THINGS: Readonly<Record<ThingToHold, string>> = {
  gelPacket: 'gel packet', syringe: 'syringe', needleSyringe: 'needle syringe', gauze: 'gauze', band: 'band', gelBottle: 'gel bottle', probe: 'probe', sheathRoll: 'sheath',
};

const WORDS: Readonly<Record<NextHold['place'], (of: Side | null, hold: NextHold) => Words>> = {
  gownNeck: () => ({ name: 'inner neck', task: 'grip the inner neck of the folded gown' }),
  clearOfTable: () => ({ name: 'let it fall open here', task: 'bring the folded gown clear of the table and squeeze' }),
  gownShoulder: (of) => ({ name: `${of} shoulder of the gown`, task: `grip the ${of} shoulder of the gown` }),
  sleeve: (of) => ({ name: `${of} sleeve`, task: `hold the gown apart at shoulder height and slip into the ${of} sleeve: squeeze` }),
  upSleeve: () => ({ name: 'up through the sleeve', task: 'push up through the sleeve, from the shoulder on' }),
  cuffFromInside: () => ({ name: 'cuff, from inside', task: 'grip the cuff from inside' }),
  gloveCuff: (of) => ({ name: `cuff of the ${of} glove`, task: `grip the ${of} glove by its cuff` }),
  fingertips: (of, { act }) => ({ name: 'glove on the palm', task: act === 'grip' ? `grip the ${of} glove once it lies there` : `lay the ${of} glove on the ${of} palm, its cuff at the fingertips` }),
  gloveEdge: () => ({ name: 'edge of the cuff', task: 'grip the edge of the glove’s cuff and draw it over the knit cuff' }),
  gloveMouth: () => ({ name: 'mouth of the glove', task: 'slip in from above, fingers first' }),
  intoGlove: () => ({ name: 'into the glove', task: 'push into the glove, toward the middle' }),
  cardHalf: () => ({ name: 'your half of the card', task: 'grip the tie card by your half' }),
  heldOut: () => ({ name: 'hold it out here', task: 'hold the tie card out in front' }),
  lying: (_, { thing }) => ({ name: THINGS[thing!], task: `take the ${THINGS[thing!]}` }),
  inHand: (_, { thing }) => ({ name: 'gather it: squeeze', task: `gather the ${THINGS[thing!]}: squeeze` }),
  mouthEdge: () => ({ name: 'edge of the mouth', task: 'grip the mouth of the sheath with the free hand' }),
  mouth: () => ({ name: 'over the mouth', task: 'hold the gel over the mouth of the sheath and squeeze' }),
  probeInside: () => ({ name: 'probe, through the film', task: 'grip the probe through the film' }),
  openEnd: () => ({ name: 'open end of the film', task: 'grip the open end of the film and draw it along the cord' }),
  probeFace: () => ({ name: 'air under the film', task: 'stroke the air from the face of the probe' }),
  behindHead: () => ({ name: 'behind the head', task: 'put the band behind the head of the probe: squeeze' }),
  alongHandle: () => ({ name: 'along the handle', task: 'put the band along the handle: squeeze' }),
  site: (_, { act, thing }) => ({ name: 'to the site', task: `bring the ${THINGS[thing!]} to the site${act === 'squeeze' ? ' and squeeze' : ''}` }),
  bin: (_, { thing }) => ({ name: 'into the bin', task: `let the ${THINGS[thing!]} fall into the bin` }),
  together: () => ({ name: 'wait here', task: 'wait in front, above the waist' }),
};

/** Name of the place of a hold: "inner neck". */
export const holdName = (hold: NextHold): string => WORDS[hold.place](hold.of, hold).name;

/** What a hand does at a hold: "grip the inner neck of the folded gown". */
export const holdTask = (hold: NextHold): string => WORDS[hold.place](hold.of, hold).task;
