import { expect } from '@playwright/test';
import type { RoomHands } from './roomHands.ts';
import type { RoomPage } from './roomPage.ts';

/** Where the right palm holds the mouth of the sheath, in metres: over the patient and clear of the field. */
const MOUTH = [0.04, 1.34] as const;
/** Where the left hand waits, and the right one between two bands. */
const LEFT_WAITS = [0.28, 1.14] as const;
const RIGHT_WAITS = [-0.15, 1.2] as const;
/** From the left edge of the film on the probe to its axis, and half the length of the probe, in metres. */
const BESIDE_AXIS_M = 0.012;
const HALF_PROBE_M = 0.062;
/** How still a probe hangs that moves no further than this between two looks, in metres; looks at it in a row. */
const STILL_M = 0.004;
const STILL_LOOKS = 3;
const LOOK_STEPS = 24;
/** Longest that anything is waited for, in steps. */
const MOST_STEPS = 2400;

export type Request = 'bringProbe' | 'lower' | 'letGo' | 'pullTail';
/** How the assistant is asked: by a button of the panel or by a key. */
export type Ask = (request: Request) => Promise<void>;

/** Loading the probe as a careful operator does, kit table on the right: the right hand holds the mouth, the left does the rest. */
export class SheathWork {
  constructor(
    private readonly room: RoomPage,
    private readonly hands: RoomHands,
    private readonly ask: Ask,
  ) {}

  /** The folded sheath from the kit table to over the field. */
  async fetch(): Promise<void> {
    const { hands } = this;
    await hands.palmTo('right', -0.3, 1.38);
    await hands.palmTo('right', -0.75, 1.38);
    await hands.turn('right', -40);
    await hands.pick('right', 'sheathRoll');
    await hands.palmTo('right', -0.6, 1.42);
    await hands.turn('right', -10);
    await hands.palmTo('right', ...MOUTH);
  }

  /** The left hand opens the mouth, and leaves it to the right one. */
  async open(): Promise<void> {
    const { hands } = this;
    await hands.palmTo('left', 0.3, 1.35);
    await hands.turn('left', -10);
    await hands.fingersTo('left', MOUTH[0] + 0.17, MOUTH[1] - 0.01, 'fine');
    await hands.gripUntil('left', 'pocket');
  }

  async aside(): Promise<void> {
    const { hands } = this;
    await hands.drop('left');
    await hands.palmTo('left', ...LEFT_WAITS);
  }

  async gel(): Promise<void> {
    const { hands } = this;
    await hands.palmTo('left', 0.33, 1.3);
    await hands.turn('left', -40);
    await hands.pick('left', 'gel');
    await hands.palmTo('left', 0.33, 1.36);
    await hands.turn('left', -10);
    const { x, y } = await this.room.end('sheathRoll');
    await hands.endTo('left', x + 0.02, y + 0.06, 'fine');
    await hands.use('left', 0.4);
  }

  /** The empty packet laid down while the gel runs to the closed end. */
  async layPacket(): Promise<void> {
    const { hands } = this;
    await hands.palmTo('left', 0.33, 1.36);
    await this.done('gelInside');
    await hands.turn('left', -40);
    await hands.endTo('left', 0.3, 1.1);
    await hands.endTo('left', 0.3, 1.02, 'fine');
    await hands.drop('left');
    await hands.turn('left', -10);
    await hands.palmTo('left', ...LEFT_WAITS);
  }

  /** The probe brought, and the mouth moved under its face. */
  async bring(): Promise<void> {
    await this.ask('bringProbe');
    await this.whenAssistant('overMouth');
    await this.probeIsStill();
    const probe = await this.room.end('probe');
    const mouth = await this.room.end('sheathRoll');
    const hand = await this.room.hand('right');
    await this.hands.palmTo('right', hand.x + probe.x - mouth.x, MOUTH[1], 'fine');
  }

  async lower(): Promise<void> {
    await this.ask('lower');
    await this.whenAssistant('lowering');
    await this.until('the probe at the closed end', async () => (await this.room.assistantDoes()) !== 'lowering');
  }

  async takeProbe(): Promise<void> {
    const { x, y } = await this.room.item('probe');
    await this.hands.fingersTo('left', x - 0.018, y - 0.01, 'fine');
    await this.hands.gripUntil('left', 'probe');
  }

  async letGo(): Promise<void> {
    await this.ask('letGo');
    await this.done('probeTaken');
  }

  /** The right hand draws the open end a little way up the cord. */
  async draw(): Promise<void> {
    const { hands } = this;
    const { x } = await this.room.hand('right');
    await hands.palmTo('right', x + 0.03, MOUTH[1] + 0.12, 'fine');
    await hands.drop('right');
    await hands.palmTo('right', -0.1, 1.35);
  }

  async tail(): Promise<void> {
    await this.ask('pullTail');
    await this.whenAssistant('pullingTail');
    await this.done('covered');
    await this.until('the end left alone', async () => (await this.room.assistantDoes()) !== 'pullingTail');
  }

  /** A band from the field round the film, so far from the face in metres. */
  async band(id: string, alongM: number): Promise<void> {
    const { hands } = this;
    // Steeply from above: the bands lie where the sheet begins to rise to its edge.
    await hands.turn('right', -60);
    await hands.pick('right', id);
    await hands.palmTo('right', -0.15, 1.25);
    await hands.turn('right', -10);
    const { x, y } = await this.room.item('probe');
    const face = await this.room.end('probe');
    const u = 1 - alongM / HALF_PROBE_M;
    await hands.fingersTo('right', x + (face.x - x) * u - BESIDE_AXIS_M, y + (face.y - y) * u, 'fine');
    await hands.use('right', 0.2);
    await hands.palmTo('right', ...RIGHT_WAITS);
  }

  async bands(): Promise<void> {
    await this.band('bandOne', 0.03);
    await this.band('bandTwo', 0.11);
    await this.done('banded');
  }

  async layDown(): Promise<void> {
    const { hands } = this;
    await hands.palmTo('right', -0.25, 1.25);
    await hands.turn('left', -50);
    await hands.palmTo('left', 0.35, 1.1);
    await hands.palmTo('left', 0.33, 1.03, 'fine');
    await hands.drop('left');
    await hands.palmTo('left', 0.33, 1.25);
    await this.done('laidDown');
  }

  private whenAssistant(doing: string): Promise<void> {
    return this.until(`the assistant is at ${doing}`, async () => (await this.room.assistantDoes()) === doing);
  }

  /** Waits until the probe has stopped swinging. */
  private async probeIsStill(): Promise<void> {
    let last = await this.room.item('probe');
    let still = 0;
    await this.until('the probe hangs still', async () => {
      const now = await this.room.item('probe');
      still = Math.hypot(now.x - last.x, now.y - last.y) < STILL_M ? still + 1 : 0;
      last = now;
      return still >= STILL_LOOKS;
    });
  }

  /** Goes on as it is until the task is done, and holds that nothing was broken so far. */
  private async done(task: string): Promise<void> {
    await this.until(`${task} is done`, async () => (await this.room.tasksDone()).includes(task));
    expect(await this.room.rulesBroken()).toEqual([]);
  }

  private async until(what: string, isSo: () => Promise<boolean>): Promise<void> {
    for (let k = 0; k < MOST_STEPS; k += LOOK_STEPS) {
      if (await isSo()) return;
      await this.room.advance(LOOK_STEPS);
    }
    expect(await isSo(), what).toBe(true);
  }
}
