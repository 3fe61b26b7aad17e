import { expect, test } from '@playwright/test';
import { RoomPage } from './support/roomPage.ts';

/** A run of sheathing that has all that the field needs, and a packet that is still closed. */
const LOADING = {
  format: 'sterile-field-scenario', version: 1, id: 'own-loading', title: 'Own loading', summary: 'A sheath, gel and two bands.', seed: 1, station: 'sheath', cord: { lengthM: 2.6 },
  items: [
    { id: 'sheathGel', kind: 'gelPacket', xM: -1.1 },
    { id: 'bandA', kind: 'band', xM: -1.02 },
    { id: 'bandB', kind: 'band', xM: -0.94 },
    { id: 'gel', kind: 'gelPacket', xM: -0.31, rubbish: true },
    { id: 'anaesthetic', kind: 'syringe', xM: 0.32 },
    { id: 'needle', kind: 'needleSyringe', xM: -0.22 },
    { id: 'spareBand', kind: 'band', xM: -0.86, spare: true },
  ],
};

test('a run that begins with the sheath is played alone or on into the field, and shows where it is', async ({ page }) => {
  await page.goto('?test&renderer=canvas');
  await expect(page.getByRole('group', { name: 'How far' })).toHaveCount(0);
  await page.locator('input[type=file]').setInputFiles({ name: 'loading.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(LOADING)) });
  await expect(page.getByRole('radio', { name: /Own loading/ })).toBeChecked();
  await expect(page.getByRole('radio', { name: 'Loading alone' })).toBeChecked();
  await page.getByRole('radio', { name: 'then on into the field' }).check();
  await page.getByRole('button', { name: /^Start/ }).click();
  await expect(page.getByRole('heading', { name: 'Sheath the probe' })).toBeVisible();
  await expect(page.getByText('1 of 2')).toBeVisible();
  await expect(page.getByRole('list', { name: 'Tasks' }).getByRole('listitem')).toHaveCount(6);
  await expect(page.getByRole('list', { name: 'Tasks' }).getByRole('listitem').first()).toContainText('gel inside');
  for (const name of [/^Bring the probe/, /^Lower the probe/, /^Pull the tail/, /^Open a packet/]) await expect(page.getByRole('button', { name })).toBeVisible();
  await expect(page.locator('.hint')).toHaveText('Take the sheath, and open its mouth with the other hand.');

  await page.waitForFunction(() => 'trainer' in window);
  await page.getByRole('button', { name: /^Bring the probe/ }).click();
  await page.locator('.room').focus();
  for (const key of ['KeyZ', 'Comma', 'Period', 'Semicolon']) await page.keyboard.press(key);
  await page.waitForTimeout(200);
  const asked = await page.evaluate(() => (window as unknown as { trainer: { commandsSoFar(): { command: { type: string; request?: string } }[] } }).trainer.commandsSoFar().flatMap(({ command }) => (command.type === 'ask' ? [command.request] : [])));
  expect(asked).toEqual(['bringProbe', 'lower', 'pullTail', 'openPacket', 'offerPacket']);
});

test('a run on the field has no requests for a sheath, by button or by key', async ({ page }) => {
  const room = await new RoomPage(page).start('A quiet room');
  await expect(page.getByRole('heading', { name: 'Work the field' })).toBeVisible();
  await expect(page.getByText('1 of 2')).toHaveCount(0);
  await expect(page.getByRole('button', { name: /^Bring the probe/ })).toHaveCount(0);
  await page.locator('.room').focus();
  await page.keyboard.press('KeyC');
  await room.advance(2);
  const asked = await page.evaluate(() => (window as unknown as { trainer: { commandsSoFar(): { command: { type: string } }[] } }).trainer.commandsSoFar().filter(({ command }) => command.type === 'ask').length);
  expect(asked).toBe(0);
});

test('the bed goes up by key, with the patient, where it can be moved', async ({ page }) => {
  const room = await new RoomPage(page).start('Sheathing the probe');
  for (const name of [/^Raise the bed/, /^Lower the bed/]) await expect(page.getByRole('button', { name })).toBeVisible();
  const before = await room.site();
  await page.locator('.room').focus();
  await page.keyboard.press('PageUp');
  await room.advance(1200);
  expect((await room.site()).y - before.y).toBeCloseTo(0.05, 3);
});
