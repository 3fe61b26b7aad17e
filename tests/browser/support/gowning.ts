import type { RoomHands } from './roomHands.ts';
import type { RoomPage, Side } from './roomPage.ts';

/** Where the operator stands, and heights at which hands carry the folded gown and work in front, in the roomy scenario (m). */
const X = -1.26;
const CARRY_Y = 1.44;
const WORK_Y = 1.29;
/** Steps that the assistant needs at the most for one request, and after which it is at the ties. */
const HELP_STEPS = 12 * 120;
const TYING_STEPS = 6 * 120;
/** Steps that it needs at the most to change a glove. */
const CHANGE_STEPS = 20 * 120;
const BOTH: readonly Side[] = ['right', 'left'];
const way = (side: Side): 1 | -1 => (side === 'left' ? 1 : -1);

export type GownRequest = 'tieBack' | 'takeCard';

/** Gowning and gloving as it is taught, hold by hold, with whatever leads the hands. */
export class Gowning {
  constructor(
    private readonly room: RoomPage,
    private readonly hands: RoomHands,
    private readonly ask: (request: GownRequest) => Promise<void>,
  ) {}

  /** The folded gown up by its neck and clear of the table. */
  async lift(): Promise<void> {
    const { hands, room } = this;
    const { x, y } = await room.item('gownPacket');
    await hands.turn('right', -35);
    await hands.fingersTo('right', x, y + 0.2);
    await hands.fingersTo('right', x, y + 0.045, 'fine');
    await hands.take('right', 'gownPacket');
    await hands.fingersTo('right', x, CARRY_Y);
    await hands.turn('right', -20);
    await hands.palmTo('right', X - 0.12, CARRY_Y);
  }

  async fallOpen(): Promise<void> {
    await this.hands.use('right', 0.1);
    await this.room.advance(120);
  }

  async otherShoulder(): Promise<void> {
    const right = await this.room.hand('right');
    await this.hands.fingersTo('left', right.x + 0.085 * 0.94 + 0.14, right.y - 0.085 * 0.34 - 0.04);
    await this.hands.take('left', 'gown');
  }

  async slipIn(): Promise<void> {
    const { hands } = this;
    for (const side of BOTH) {
      await hands.turn(side, 60);
      await hands.palmTo(side, X + way(side) * 0.18, 1.42);
    }
    for (const side of BOTH) await hands.use(side, 0.15);
  }

  async stretch(): Promise<void> {
    const { hands } = this;
    for (let k = 0; k < 3; k++) {
      for (const side of BOTH) await hands.palmTo(side, X + way(side) * 0.17, 1.76);
      for (const side of BOTH) await hands.palmTo(side, X + way(side) * 0.19, 1.4);
    }
  }

  /** Asks for the back to be tied; the assistant is at it then. */
  async haveTied(): Promise<void> {
    await this.ask('tieBack');
    await this.room.advance(TYING_STEPS);
  }

  tie(): Promise<void> {
    return this.room.advance(HELP_STEPS - TYING_STEPS);
  }

  /** Takes the glove of that side with the other hand, up and to the hands in front. */
  async fetchGlove(side: Side): Promise<void> {
    const { hands, room } = this;
    const by = other(side);
    const id = gloveOf(side);
    const { x, y } = await room.item(id);
    const cuff = x - way(side) * 0.1;
    await hands.palmTo(side, X + way(side) * 0.25, WORK_Y);
    await hands.turn(side, -20);
    await hands.turn(by, -35);
    await hands.fingersTo(by, cuff, y + 0.2);
    await hands.fingersTo(by, cuff, y + 0.018, 'fine');
    await hands.take(by, id);
    await hands.fingersTo(by, cuff, y + 0.32);
    for (const one of [by, side]) await hands.turn(one, 0);
    await hands.palmTo(side, X + way(side) * 0.15, WORK_Y);
    await hands.palmTo(by, X + way(by) * 0.15, WORK_Y);
  }

  /** On to the palm through the sleeve. */
  async layGlove(side: Side): Promise<void> {
    await this.hands.fingersTo(other(side), await this.tips(side), WORK_Y + 0.02, 'fine');
    await this.hands.take(side, gloveOf(side));
  }

  /** Its cuff over the knit cuff. */
  async drawCuff(side: Side): Promise<void> {
    const { hands } = this;
    const by = other(side);
    await hands.fingersTo(by, await this.tips(side), WORK_Y + 0.02, 'fine');
    await hands.take(by, 'gloveCuff');
    await hands.fingersTo(by, (await this.tips(side)) + way(side) * 0.13, WORK_Y + 0.02, 'fine');
    await hands.drop(by);
  }

  async pushIn(side: Side): Promise<void> {
    const { hands } = this;
    for (let k = 0; k < 2; k++) {
      await hands.palmTo(side, X + way(side) * 0.22, WORK_Y + 0.02);
      await hands.palmTo(side, X + way(side) * 0.04, WORK_Y + 0.02);
    }
    await hands.palmTo(side, X + way(side) * 0.15, WORK_Y);
  }

  async takeCard(): Promise<void> {
    const { hands, room } = this;
    const { x, y } = await room.item('tieCard');
    await hands.palmTo('left', X + 0.2, WORK_Y);
    await hands.turn('right', -35);
    await hands.fingersTo('right', x - 0.03, y + 0.12);
    await hands.fingersTo('right', x - 0.03, y + 0.01, 'fine');
    await hands.take('right', 'tieCard');
    await hands.palmTo('right', X - 0.05, WORK_Y);
  }

  async passCard(): Promise<void> {
    await this.ask('takeCard');
    await this.room.advance(HELP_STEPS);
  }

  async wait(): Promise<void> {
    for (const side of BOTH) await this.hands.palmTo(side, X + way(side) * 0.1, WORK_Y);
    await this.room.advance(11 * 120);
  }

  /** Holds both hands out, still, while the assistant pulls a glove off and opens a new one. */
  async haveGloveChanged(ask: () => Promise<void>): Promise<void> {
    for (const side of BOTH) await this.hands.palmTo(side, X + way(side) * 0.2, WORK_Y);
    await this.room.advance(60);
    await ask();
    await this.room.advance(CHANGE_STEPS);
  }

  /** The new right glove hangs from the fingers of the left hand by its turned-back cuff. */
  async hangGlove(): Promise<void> {
    const { hands, room } = this;
    const { x, y } = await room.item('gloveRight');
    await hands.palmTo('right', X - 0.3, WORK_Y);
    await hands.turn('left', -35);
    await hands.fingersTo('left', x + 0.11, y + 0.2);
    await hands.fingersTo('left', x + 0.11, y + 0.018, 'fine');
    await hands.take('left', 'gloveRight');
    await hands.fingersTo('left', x + 0.11, y + 0.4);
    await hands.turn('left', 0);
    await hands.palmTo('left', X + 0.15, WORK_Y);
    await room.advance(60);
  }

  /** The bare right hand goes in from above. */
  async slipIntoGlove(): Promise<void> {
    const { hands } = this;
    const x = await this.tips('left');
    await hands.turn('right', -90);
    await hands.fingersTo('right', x, WORK_Y + 0.12);
    await hands.fingersTo('right', x, WORK_Y - 0.14, 'fine');
  }

  /** The left hand, still at the cuff, draws it up the sleeve. */
  async drawOver(): Promise<void> {
    const { hands } = this;
    await hands.fingersTo('left', await this.tips('left'), WORK_Y + 0.14, 'fine');
    await hands.drop('left');
    await hands.turn('right', 0);
  }

  /** Where the fingertips of a level hand are from left to right (m). */
  private async tips(side: Side): Promise<number> {
    return (await this.room.hand(side)).x - way(side) * 0.085;
  }
}

const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');
const gloveOf = (side: Side): string => (side === 'left' ? 'gloveLeft' : 'gloveRight');

/** The stages in their order; each is something that a picture can be taken after. */
export const GOWN_STAGES: readonly (readonly [name: string, play: (work: Gowning) => Promise<void>])[] = [
  ['lift', (work) => work.lift()],
  ['fallOpen', (work) => work.fallOpen()],
  ['otherShoulder', (work) => work.otherShoulder()],
  ['slipIn', (work) => work.slipIn()],
  ['stretch', (work) => work.stretch()],
  ['tying', (work) => work.haveTied()],
  ['tie', (work) => work.tie()],
  ...(['right', 'left'] as const).flatMap((side): [string, (work: Gowning) => Promise<void>][] => [
    [`fetch-${side}`, (work) => work.fetchGlove(side)],
    [`lay-${side}`, (work) => work.layGlove(side)],
    [`draw-${side}`, (work) => work.drawCuff(side)],
    [`push-${side}`, (work) => work.pushIn(side)],
  ]),
  ['card', (work) => work.takeCard()],
  ['passCard', (work) => work.passCard()],
  ['wait', (work) => work.wait()],
];
