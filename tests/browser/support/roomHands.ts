import { expect } from '@playwright/test';
import type { RoomPage, Side } from './roomPage.ts';

/** How a movement is made: swiftly through the air, or slowly and to the millimetre that the screen allows. */
export type Care = 'swift' | 'fine';

/** Length from the middle of the palm to the fingertips in metres, and how often a grip is tried. */
const FINGERS_M = 0.085;
const TRIES = 3;

/**
 * Two hands led by something a person has: mouse, fingers or keys. What leads them is the matter of each kind; all of them look
 * where hands and things are, and go on from there.
 */
export abstract class RoomHands {
  private readonly angles: Record<Side, number> = { left: -20, right: -20 };

  constructor(protected readonly room: RoomPage) {}

  /** Moves the middle of the palm to (x, y) metres. */
  abstract palmTo(side: Side, x: number, y: number, care?: Care): Promise<void>;
  /** Squeezes or injects for so long. */
  abstract use(side: Side, seconds: number): Promise<void>;
  /** Turns the wrist by about so many degrees, fingertips up; gives by how many it was. */
  protected abstract turnBy(side: Side, degrees: number): Promise<number>;
  /** Closes an open hand, opens a closed one. */
  protected abstract flipGrip(side: Side): Promise<void>;

  /** Turns the fingers to an angle above the horizontal, in degrees. */
  async turn(side: Side, degrees: number): Promise<void> {
    this.angles[side] += await this.turnBy(side, degrees - this.angles[side]);
    await this.room.advance(60);
  }

  /** Moves the hand so that the working end of what it holds comes to (x, y). */
  async endTo(side: Side, x: number, y: number, care: Care = 'swift'): Promise<void> {
    const { holds, ...hand } = await this.room.hand(side);
    const end = await this.room.end(holds!);
    await this.palmTo(side, hand.x + x - end.x, hand.y + y - end.y, care);
  }

  async fingersTo(side: Side, x: number, y: number, care: Care = 'swift'): Promise<void> {
    const angle = (this.angles[side] * Math.PI) / 180;
    const way = side === 'right' ? 1 : -1;
    await this.palmTo(side, x - way * FINGERS_M * Math.cos(angle), y - FINGERS_M * Math.sin(angle), care);
  }

  /** Takes a lying thing from above: fingers over it, down, close. */
  async pick(side: Side, id: string): Promise<void> {
    const { x, y } = await this.room.item(id);
    await this.fingersTo(side, x, y + 0.16);
    await this.fingersTo(side, x, y + 0.014, 'fine');
    await this.gripUntil(side, id);
  }

  /** Closes the hand on what its fingers reach, which must be that. */
  async take(side: Side, holds: string): Promise<void> {
    await this.gripUntil(side, holds);
  }

  /** Lets go of what the hand holds. */
  async drop(side: Side): Promise<void> {
    await this.gripUntil(side, null);
  }

  /** Closes or opens the hand where it is, until it holds this. A press that a busy machine took for something else is made again, as a person would. */
  async gripUntil(side: Side, holds: string | null): Promise<void> {
    for (let k = 0; k < TRIES && (await this.room.hand(side)).holds !== holds; k++) {
      await this.flipGrip(side);
      await this.room.advance(60);
    }
    expect((await this.room.hand(side)).holds, `what the ${side} hand holds`).toBe(holds);
  }
}
