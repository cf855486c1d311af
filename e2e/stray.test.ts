import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser, Page } from '@playwright/test';
import { DESK, PHONE, openBrowser } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';
import { axeFaults, layoutFaults, watchPage } from './page-faults.ts';

const browser: Browser | null = await openBrowser();

if (browser) {
  let lab: OpenLab;
  before(async () => {
    lab = await openLab({ demo: true });
  });
  after(async () => {
    await lab.close();
    await browser.close();
  });

  const open = async (path: string, kind: typeof DESK | typeof PHONE = DESK): Promise<Page> => {
    const page = await (await browser.newContext({ ...kind, reducedMotion: 'reduce' })).newPage();
    page.setDefaultTimeout(10_000);
    await page.goto(lab.url + path);
    return page;
  };
  const answer = (page: Page, words: RegExp): Promise<void> => page.getByRole('heading', { level: 1, name: words }).waitFor();

  for (const [kind, name] of [
    [DESK, '1440 px'],
    [PHONE, '390 px'],
  ] as const) {
    void test(`bands that are pressed read to their value and its bags at ${name}, with no fault that axe knows in either scheme`, async () => {
      const page = await open('stray', kind);
      const faults = watchPage(page, lab.url);
      await answer(page, /^What is this stray part\?$/);
      for (const colour of ['brown', 'black', 'orange', 'gold']) await page.locator('.pal label', { hasText: colour }).click();
      await answer(page, /^It is most likely 10\s*kΩ ±5\s*%\.$/);
      await page.locator('.bagsof .tag').first().waitFor();
      assert.equal(new URL(page.url()).searchParams.get('bands'), 'brown.black.orange.gold');
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        assert.deepEqual(await axeFaults(page), []);
      }
      assert.deepEqual(await layoutFaults(page, { fingers: kind === PHONE }), []);
      await page.locator('.resistor .band').nth(2).click();
      await page.locator('.pal label', { hasText: 'red' }).click();
      await answer(page, /^It is most likely 1\s*kΩ ±5\s*%\.$/);
      await page.reload();
      await answer(page, /^It is most likely 1\s*kΩ ±5\s*%\.$/);
      assert.deepEqual(faults, []);
      await page.context().close();
    });
  }

  void test('by keys alone: the bands are set, the gap decides between both ways, and the bag opens', async () => {
    const page = await open('stray?bands=-.-.-.-.-');
    const tabTo = async (name: RegExp | string, role: 'radio' | 'link' = 'radio'): Promise<void> => {
      const target = page.getByRole(role, { name }).first();
      for (let tabs = 0; tabs < 60; tabs += 1) {
        if (await target.evaluate((element) => element === document.activeElement)) return;
        await page.keyboard.press('Tab');
      }
      assert.fail(`Tab never comes to ${String(name)}`);
    };
    await tabTo(/^1 not set$/);
    const colours = ['brown', 'black', 'black', 'red', 'brown'];
    for (const [at, colour] of colours.entries()) {
      await page.keyboard.press('Tab');
      // the first key takes the first colour, arrows walk on from it
      await page.keyboard.press('Space');
      const steps = ['black', 'brown', 'red'].indexOf(colour);
      for (let step = 0; step < steps; step += 1) await page.keyboard.press('ArrowRight');
      await page.getByRole('radio', { name: colour, exact: true, checked: true }).waitFor();
      if (at === colours.length - 1) break;
      await page.keyboard.press('Shift+Tab');
      await page.keyboard.press('ArrowRight');
      await page.getByText(`Band ${at + 2} is`).waitFor();
    }
    await answer(page, /^It is 10\s*kΩ ±1\s*% or 120\s*Ω ±1\s*%\.$/);
    await tabTo('I see none');
    await page.keyboard.press('ArrowRight');
    await answer(page, /^It is most likely 120\s*Ω ±1\s*%\.$/);
    await page.keyboard.press('ArrowRight');
    await answer(page, /^It is most likely 10\s*kΩ ±1\s*%\.$/);
    await page.locator('.bagsof .tag').first().waitFor();
    const tag = (await page.locator('.bagsof .tag').first().innerText()).replaceAll(/\D/g, '');
    await tabTo(new RegExp(`^bag ${tag}$`), 'link');
    await page.keyboard.press('Enter');
    await page.getByRole('complementary', { name: `Bag ${tag}`, exact: true }).waitFor();
    await page.context().close();
  });

  void test('a printed marking gives every reading; a chip is offered no bag that is not there, but the way to receive it', async () => {
    const page = await open('stray');
    await page.getByText('chip resistor').click();
    await page.getByLabel('What is printed on it').fill('10R');
    await answer(page, /^It is most likely 10\s*Ω\.$/);
    const rows = page.locator('.reads tbody tr');
    assert.equal(await rows.count(), 2);
    await rows.nth(1).getByText('No bag holds it.').waitFor();
    assert.match(await rows.nth(1).innerText(), /possible[\s\S]*1\.24/);
    await page.waitForFunction(() => location.search === '?look=chip&mark=10R');
    await rows.nth(1).getByRole('link', { name: 'Nothing like it? Receive it' }).click();
    await page.waitForURL(/\/receive/);
    assert.equal(await page.getByLabel('What it says').inputValue(), '1.24Ω 1% resistor');
    await page.goBack();
    await answer(page, /^It is most likely 10\s*Ω\.$/);
    await page.getByText('A line stands under or over the figures').click();
    await answer(page, /^Figures with a line under or over them are not read\.$/);
    await page.context().close();
  });

  void test('a bag of a mains safety part is offered with its caution, after the others', async () => {
    const page = await open('stray?look=capacitor&mark=2200');
    const first = page.locator('.reads tbody tr').first();
    await first.getByText('a safety part: only with its class printed on it').waitFor();
    assert.match(await first.locator('.bagsof li').last().innerText(), /safety part/);
    assert.doesNotMatch(await first.locator('.bagsof li').first().innerText(), /safety part/);
    await page.context().close();
  });

  void test('the page stands under More', async () => {
    const page = await open('');
    await page.getByRole('button', { name: 'More' }).last().click();
    await page.getByRole('link', { name: 'A stray part' }).click();
    await answer(page, /^What is this stray part\?$/);
    await page.context().close();
  });
}
