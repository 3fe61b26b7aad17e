import type { Side } from '../base/side.ts';
import type { GownPlace, NextHold } from './nextHold.ts';

interface Words {
  /** Name of the place, for a label in the room. */
  readonly name: string;
  /** What the hand does there. */
  readonly task: string;
}

const WORDS: Readonly<Record<GownPlace, (of: Side | null, hold: NextHold) => Words>> = {
  gownNeck: () => ({ name: 'inner neck', task: 'grip the inner neck of the folded gown' }),
  clearOfTable: () => ({ name: 'let it fall open here', task: 'bring the folded gown clear of the table and squeeze' }),
  gownShoulder: (of) => ({ name: `${of} shoulder of the gown`, task: `grip the ${of} shoulder of the gown` }),
  sleeve: (of) => ({ name: `${of} sleeve`, task: `slip into the ${of} sleeve: squeeze` }),
  upSleeve: () => ({ name: 'up through the sleeve', task: 'push up through the sleeve, from the shoulder on' }),
  cuffFromInside: () => ({ name: 'cuff, from inside', task: 'grip the cuff from inside' }),
  gloveCuff: (of) => ({ name: `cuff of the ${of} glove`, task: `grip the ${of} glove by its cuff` }),
  fingertips: (of, { act }) => ({ name: 'glove on the palm', task: act === 'grip' ? `grip the ${of} glove once it lies there` : `lay the ${of} glove on the ${of} palm, its cuff at the fingertips` }),
  gloveEdge: () => ({ name: 'edge of the cuff', task: 'grip the edge of the glove’s cuff and draw it over the knit cuff' }),
  intoGlove: () => ({ name: 'into the glove', task: 'push into the glove, toward the middle' }),
  cardHalf: () => ({ name: 'your half of the card', task: 'grip the tie card by your half' }),
  heldOut: () => ({ name: 'hold it out here', task: 'hold the tie card out in front' }),
  together: () => ({ name: 'wait here', task: 'wait in front, above the waist' }),
};

/** Name of the place of a hold: "inner neck". */
export const holdName = (hold: NextHold): string => WORDS[hold.place](hold.of, hold).name;

/** What a hand does at a hold: "grip the inner neck of the folded gown". */
export const holdTask = (hold: NextHold): string => WORDS[hold.place](hold.of, hold).task;
