import { expect, test } from '@playwright/test';
import { FieldWork } from './support/fieldWork.ts';
import { TouchHands } from './support/touchHands.ts';
import { KeyHands } from './support/keyHands.ts';
import { RoomPage } from './support/roomPage.ts';

const THROUGH_READY = ['gel', 'view', 'park', 'anaesthetic', 'ready'];

async function throughReady(work: FieldWork): Promise<void> {
  await test.step('gel', () => work.gel());
  await test.step('view', () => work.view());
  await test.step('park', () => work.park());
  await test.step('anaesthetic', () => work.anaesthetic());
  await test.step('ready', () => work.ready());
}

test.describe('by touch', () => {
  test.use({ hasTouch: true });

  test('two fingers lead both hands at once, through to probe and needle at the site without a break', async ({ page }) => {
    test.setTimeout(900_000);
    const room = await new RoomPage(page).start('A quiet room');
    const hands = new TouchHands(room);
    await hands.palmsTo({ right: [-0.3, 1.4], left: [0.2, 1.4] });
    await hands.palmsTo({ right: [-0.27, 1.27], left: [0.27, 1.35] });
    const [right, left] = [await room.hand('right'), await room.hand('left')];
    for (const off of [right.x + 0.27, right.y - 1.27, left.x - 0.27, left.y - 1.35]) expect(Math.abs(off)).toBeLessThan(0.01);
    await throughReady(new FieldWork(room, hands));
    expect(await room.tasksDone()).toEqual(THROUGH_READY);
    expect(await room.rulesBroken()).toEqual([]);
  });
});

test('keys alone go through to probe and needle at the site without a break', async ({ page }) => {
  test.setTimeout(900_000);
  const room = new RoomPage(page);
  const hands = await KeyHands.on(room);
  await room.start('A quiet room');
  await hands.holdTime();
  await throughReady(new FieldWork(room, hands));
  expect(await room.tasksDone()).toEqual(THROUGH_READY);
  expect(await room.rulesBroken()).toEqual([]);
});
