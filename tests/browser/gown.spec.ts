import { expect, test } from '@playwright/test';
import { MouseHands } from './support/mouseHands.ts';
import { replaySaved } from './support/replaySaved.ts';
import { RoomPage, type Side } from './support/roomPage.ts';

/** Where the operator stands, and heights at which hands carry the folded gown and work in front, in the roomy scenario (m). */
const X = -1.26;
const CARRY_Y = 1.44;
const WORK_Y = 1.29;
const way = (side: Side): 1 | -1 => (side === 'left' ? 1 : -1);

/** Gowning and gloving with a real mouse, hold by hold. */
class GownMouse {
  constructor(
    private readonly room: RoomPage,
    private readonly hands: MouseHands,
  ) {}

  async gown(): Promise<void> {
    const { hands, room } = this;
    const { x, y } = await room.item('gownPacket');
    await hands.turn('right', -35);
    await hands.fingersTo('right', x, y + 0.2);
    await hands.fingersTo('right', x, y + 0.045, 'fine');
    await this.grip('right', 'gownPacket');
    await hands.fingersTo('right', x, CARRY_Y);
    await hands.turn('right', -20);
    await hands.palmTo('right', X - 0.12, CARRY_Y);
    await hands.use('right', 0.1);
    await room.advance(120);
    const right = await room.hand('right');
    await hands.fingersTo('left', right.x + 0.085 * 0.94 + 0.1, right.y - 0.085 * 0.34);
    await this.grip('left', 'gown');
  }

  async arms(): Promise<void> {
    const { hands } = this;
    for (const side of ['right', 'left'] as const) {
      await hands.turn(side, 60);
      await hands.palmTo(side, X + way(side) * 0.18, 1.42);
    }
    for (const side of ['right', 'left'] as const) await hands.use(side, 0.15);
    for (let k = 0; k < 3; k++) {
      for (const side of ['right', 'left'] as const) await hands.palmTo(side, X + way(side) * 0.17, 1.76);
      for (const side of ['right', 'left'] as const) await hands.palmTo(side, X + way(side) * 0.19, 1.4);
    }
  }

  async ask(name: string): Promise<void> {
    await this.room.page.getByRole('button', { name: new RegExp(`^${name}`) }).click();
    await this.room.advance(12 * 120);
  }

  async glove(side: Side): Promise<void> {
    const { hands, room } = this;
    const by: Side = side === 'left' ? 'right' : 'left';
    const id = side === 'left' ? 'gloveLeft' : 'gloveRight';
    const { x, y } = await room.item(id);
    const cuff = x - way(side) * 0.1;
    await hands.palmTo(side, X + way(side) * 0.25, WORK_Y);
    await hands.turn(side, -20);
    await hands.turn(by, -35);
    await hands.fingersTo(by, cuff, y + 0.2);
    await hands.fingersTo(by, cuff, y + 0.018, 'fine');
    await this.grip(by, id);
    await hands.fingersTo(by, cuff, y + 0.32);
    for (const one of [by, side]) await hands.turn(one, 0);
    await hands.palmTo(side, X + way(side) * 0.15, WORK_Y);
    await hands.palmTo(by, X + way(by) * 0.15, WORK_Y);
    const tips = async (): Promise<number> => (await room.hand(side)).x - way(side) * 0.085;
    await hands.fingersTo(by, await tips(), WORK_Y + 0.02, 'fine');
    await this.grip(side, id);
    await hands.fingersTo(by, await tips(), WORK_Y + 0.02, 'fine');
    await this.grip(by, 'gloveCuff');
    await hands.fingersTo(by, (await tips()) + way(side) * 0.13, WORK_Y + 0.02, 'fine');
    await hands.drop(by);
    for (let k = 0; k < 2; k++) {
      await hands.palmTo(side, X + way(side) * 0.22, WORK_Y + 0.02);
      await hands.palmTo(side, X + way(side) * 0.04, WORK_Y + 0.02);
    }
    await hands.palmTo(side, X + way(side) * 0.15, WORK_Y);
  }

  async card(): Promise<void> {
    const { hands, room } = this;
    const { x, y } = await room.item('tieCard');
    await hands.palmTo('left', X + 0.2, WORK_Y);
    await hands.turn('right', -35);
    await hands.fingersTo('right', x - 0.03, y + 0.12);
    await hands.fingersTo('right', x - 0.03, y + 0.01, 'fine');
    await this.grip('right', 'tieCard');
    await hands.palmTo('right', X - 0.05, WORK_Y);
    await this.ask('Take the card');
  }

  async wait(): Promise<void> {
    for (const side of ['right', 'left'] as const) await this.hands.palmTo(side, X + way(side) * 0.1, WORK_Y);
    await this.room.advance(11 * 120);
  }

  private grip(side: Side, holds: string): Promise<void> {
    return this.hands.take(side, holds);
  }
}

test('gown and gloves with a mouse, from the start page to a verified report, without a break', async ({ page }) => {
  test.setTimeout(900_000);
  const room = await new RoomPage(page).start('Gown and gloves with room to spare', 'shown');
  await expect(page.getByRole('heading', { name: 'Gown and glove' })).toBeVisible();
  await expect(page.locator('.hint')).toHaveText('Take the folded gown by its neck, in the middle, and lift it straight up.');
  const work = new GownMouse(room, new MouseHands(room));
  await work.gown();
  await page.screenshot({ path: 'test-results/gown-open.png' });
  await work.arms();
  await expect(page.locator('.hint')).toHaveText('Ask the assistant to tie the back.');
  await page.screenshot({ path: 'test-results/gown-arms.png' });
  await work.ask('Tie the back');
  await work.glove('right');
  await page.screenshot({ path: 'test-results/gown-first-glove.png' });
  await work.glove('left');
  await work.card();
  await work.wait();
  await page.screenshot({ path: 'test-results/gown-done.png' });
  expect(await room.rulesBroken()).toEqual([]);
  expect(await room.tasksDone()).toEqual(['opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove', 'turned', 'waited']);
  await expect(page.getByText('2 of 3')).toBeVisible();

  await room.finish();
  await page.screenshot({ path: 'test-results/gown-report.png', fullPage: true });
  await replaySaved(page, 0);
});
