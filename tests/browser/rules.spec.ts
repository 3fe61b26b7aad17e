import { expect, test, type Page } from '@playwright/test';
import { REMEDY_TABLE } from '../../src/core/ledger/rules/remedyTable.ts';
import { RULE_BOOK } from '../../src/core/ledger/rules/ruleBook.ts';
import { expectAccessible } from './support/accessible.ts';

const START = '?test&renderer=canvas';

async function openRules(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Rules, remedies and local policy' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Rule book' })).toBeFocused();
}

/** Own scenario with a wide margin and a rule that it does not judge. */
const OWN = {
  format: 'sterile-field-scenario', version: 1, id: 'own', title: 'Own policy', summary: 'A wide margin.', seed: 1, station: 'field',
  policy: { marginM: 0.06 }, rulesOff: ['hand-on-face'],
};

const openOwn = (page: Page): Promise<void> =>
  page.locator('input[type=file]').first().setInputFiles({ name: 'own.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(OWN)) });

test('the rule book is loaded only when it is opened, and every part of it is accessible', async ({ page }) => {
  test.slow();
  await page.goto(START);
  const loaded = (): Promise<string[]> => page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => name.includes('RulesPage')));
  expect(await loaded()).toEqual([]);
  await openRules(page);
  expect(await loaded()).not.toEqual([]);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Remedies', exact: true }).click();
  await expect(page.getByRole('rowheader')).toHaveCount(REMEDY_TABLE.length);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Local policy', exact: true }).click();
  await expect(page.getByRole('rowheader', { name: /Margin of a sterile surface/ })).toBeVisible();
  await expectAccessible(page);
});

test('keys alone find a rule and lead back', async ({ page }) => {
  await page.goto(START);
  await openRules(page);
  await page.getByLabel('Find').focus();
  await page.keyboard.type('margin');
  await expect(page.getByText(`3 of ${RULE_BOOK.length} rules`)).toBeVisible();
  await expect(page.getByRole('heading', { level: 2, name: 'A glove on the margin of the field' })).toBeVisible();
  await page.getByRole('button', { name: /A glove on the margin/ }).focus();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('button', { name: /An item on the margin/ })).toBeFocused();
  await expect(page.getByRole('heading', { level: 2, name: 'An item on the margin of the field' })).toBeVisible();
  await page.keyboard.press('End');
  await expect(page.getByRole('button', { name: /The sheathed probe on the margin/ })).toBeFocused();
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1, name: 'Sterile-field trainer' })).toBeVisible();
});

test('a scenario that leaves published practice says so on its card and in the rule book, and stays chosen', async ({ page }) => {
  await page.goto(START);
  await openOwn(page);
  await expect(page.getByText('Local setting: margin of a sterile surface 6 cm; published: 2.5 cm (1 in); 5 cm in some places.')).toBeVisible();
  await expect(page.getByText('Not judged here: a gloved hand on mask or face.')).toBeVisible();
  await openRules(page);
  await expect(page.getByText('as “Own policy” sets it')).toBeVisible();
  await page.getByLabel('Local policy').selectOption({ label: 'not judged in this scenario' });
  await expect(page.getByText(`1 of ${RULE_BOOK.length} rules`)).toBeVisible();
  await expect(page.getByText('“Own policy” does not judge this rule.')).toBeVisible();
  await page.getByRole('button', { name: 'Local policy', exact: true }).click();
  await expect(page.getByRole('cell', { name: '6 cm, outside what is published' })).toBeVisible();
  await page.getByRole('button', { name: 'Start page' }).click();
  await expect(page.getByRole('radio', { name: /Own policy/ })).toBeChecked();
});

test('from a report the rule book shows the scenario of that run, and Back leads to the report again', async ({ page }) => {
  await page.goto(START);
  await page.getByRole('button', { name: /^Start/ }).click();
  await page.waitForFunction(() => 'trainer' in window);
  await page.getByRole('button', { name: 'End run' }).click();
  await page.getByRole('button', { name: 'End and see the report' }).click();
  await page.getByRole('button', { name: 'Rules', exact: true }).click();
  await expect(page.getByText('as “A quiet room” sets it')).toBeVisible();
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1, name: 'Report' })).toBeVisible();
});

test('fits a narrow screen without scrolling sideways', async ({ page }) => {
  for (const width of [820, 390]) {
    await page.setViewportSize({ width, height: 900 });
    await page.goto(START);
    await openRules(page);
    for (const part of ['Rules', 'Remedies', 'Local policy']) {
      await page.getByRole('button', { name: part, exact: true }).click();
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), `${part} at ${width}`).toBeLessThanOrEqual(0);
    }
  }
});
