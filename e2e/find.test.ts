import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from '@playwright/test';
import { openBrowser } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';

const SIZES = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];
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

  for (const viewport of SIZES) {
    for (const colorScheme of ['light', 'dark'] as const) {
      void test(`finds a part by any notation at ${viewport.width} px, ${colorScheme}, with no fault that axe knows and none in the console`, async () => {
        const context = await browser.newContext({ viewport, colorScheme });
        const page = await context.newPage();
        const faults = faultsOf(page);
        await page.goto(lab.url);
        await page.getByRole('searchbox').fill('4k7 0805');
        await page.getByRole('heading', { name: /answer/ }).waitFor();
        assert.ok((await page.getByText('R-0805-4K7', { exact: false }).count()) > 0);
        const wider = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
        assert.equal(wider, false, 'nothing sticks out sideways');
        const { violations } = await new AxeBuilder({ page }).analyze();
        assert.deepEqual(
          violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]),
          [],
        );
        assert.deepEqual(faults, []);
        await context.close();
      });
    }
  }

  void test('the slash key goes to the field and Escape clears it', async () => {
    const page = await browser.newPage();
    await page.goto(`${lab.url}?words=100n`);
    await page.getByRole('heading', { name: /answer/ }).waitFor();
    await page.keyboard.press('/');
    assert.equal(await page.getByRole('searchbox').evaluate((field) => field === document.activeElement), true);
    await page.keyboard.press('Escape');
    assert.equal(await page.getByRole('searchbox').inputValue(), '');
    await page.close();
  });

  void test('an empty lab says how to begin, and an open page follows what another process does', async () => {
    const page = await browser.newPage();
    await page.goto(empty.url);
    await page.getByRole('heading', { name: 'This lab is empty.' }).waitFor();
    empty.command('receive', '--box', 'A', '100 4k7 1% 0805');
    await page.getByRole('heading', { name: '1 bag in 1 box.' }).waitFor();
    await page.close();
  });
}

function faultsOf(page: Page): string[] {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  page.on('pageerror', (error) => faults.push(error.message));
  return faults;
}
