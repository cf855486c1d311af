import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser, Page } from '@playwright/test';
import { DESK, PHONE, openBrowser } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';
import { axeFaults, layoutFaults, watchPage } from './page-faults.ts';

const browser: Browser | null = await openBrowser();

if (browser) {
  let lab: OpenLab;
  let empty: OpenLab;
  before(async () => {
    lab = await openLab({ demo: true });
    empty = await openLab({ demo: false });
  });
  after(async () => {
    await lab.close();
    await empty.close();
    await browser.close();
  });

  const open = async (path: string, kind: typeof DESK | typeof PHONE = DESK): Promise<Page> => {
    const page = await (await browser.newContext(kind)).newPage();
    page.setDefaultTimeout(10_000);
    await page.goto(lab.url + path);
    return page;
  };
  const letters = (page: Page): Promise<string[]> => page.locator('.boxfront .letter').allInnerTexts();

  for (const kind of [DESK, PHONE]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      void test(`the boxes as they stand, and a look into one, at ${kind.viewport.width} px, ${colorScheme}`, async () => {
        const page = await open('boxes', kind);
        const faults = watchPage(page, lab.url);
        await page.emulateMedia({ colorScheme });
        await page.getByRole('heading', { level: 1, name: '258 bags in 5 boxes.' }).waitFor();
        await page.getByText('53 of 60 places filled, 4 exhausted, 1 astray').waitFor();
        assert.deepEqual(await axeFaults(page), []);
        await page.getByRole('link', { name: 'What is in box C' }).click();
        await page.getByRole('complementary', { name: 'Box C' }).getByText('TL431').first().waitFor();
        assert.equal(new URL(page.url()).search, '?box=C');
        assert.deepEqual(await axeFaults(page), []);
        assert.deepEqual(await layoutFaults(page, { fingers: kind === PHONE }), []);
        assert.deepEqual(faults, []);
        await page.goBack();
        await page.getByRole('complementary').waitFor({ state: 'detached' });
        await page.context().close();
      });
    }
  }

  void test('a box that is moved, and boxes that are stacked, stay so after a reload, and are taken back', async () => {
    const page = await open('boxes');
    await page.getByRole('button', { name: 'Move box C to the left' }).click();
    await page.getByText('The boxes stand anew.').waitFor();
    await page.waitForFunction(() => document.querySelector('.boxfront:nth-child(2) .letter')?.textContent === 'C');
    await page.reload();
    await page.locator('.boxfront').first().waitFor();
    assert.deepEqual(await letters(page), ['A', 'C', 'B', 'D', 'E']);
    await page.getByRole('button', { name: 'Move box C to the right' }).click();
    await page.waitForFunction(() => document.querySelector('.boxfront:nth-child(2) .letter')?.textContent === 'B');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('They stand as before.').waitFor();
    await page.waitForFunction(() => document.querySelector('.boxfront:nth-child(2) .letter')?.textContent === 'C');
    await page.getByText('in a stack', { exact: true }).click();
    await page.locator('.fronts.stack-of').waitFor();
    await page.reload();
    assert.equal(await page.getByRole('radio', { name: 'in a stack' }).isChecked(), true);
    await page.context().close();
  });

  void test('an undo that failed is not tried again once the boxes were moved after it', async () => {
    const page = await open('boxes');
    await page.getByRole('button', { name: /^Move box D (up|to the left)$/ }).click();
    await page.route('**/api/undo', (route) => route.abort());
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('The lab does not answer.').waitFor();
    await page.unroute('**/api/undo');
    await page.getByRole('button', { name: /^Move box D (down|to the right)$/ }).click();
    await page.getByText('The lab does not answer.').waitFor({ state: 'detached' });
    await page.getByText('The boxes stand anew.').waitFor();
    await page.context().close();
  });

  void test('a typed number opens the box of its bag, with the focus on it; Enter goes to the bag', async () => {
    const page = await open('boxes');
    await page.locator('.boxfront').first().waitFor();
    await page.keyboard.type('145');
    await page.getByRole('complementary', { name: 'Box C' }).waitFor();
    await page.waitForFunction(() => document.activeElement?.textContent === 'bag 145');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\?bag=145$/);
    await page.context().close();
  });

  void test('a lab without a box says how one comes; the first bag brings it, with its next number', async () => {
    const page = await browser.newPage();
    await page.goto(`${empty.url}boxes`);
    await page.getByRole('heading', { level: 1, name: 'No box stands here yet.' }).waitFor();
    empty.command('receive', '--box', 'A', '100 4k7 1% 0805');
    await page.getByRole('heading', { level: 1, name: '1 bag in 1 box.' }).waitFor();
    await page.getByText('1 of 60 places filled, next number 2').waitFor();
    await page.close();
  });
}
