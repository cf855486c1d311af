import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContextOptions, Page } from '@playwright/test';
import { openBrowser } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';
import { watchPage } from './page-faults.ts';

const WIDE = { width: 1440, height: 900 };
const PHONE = { width: 390, height: 844 };
const LOGGER = 'boards/Tide%20logger';
const MANY = 400;
const LONG = 'Straßenbahn/Haltestellen-Anzeigetafelansteuerungsplatine 12?';

const browser: Browser | null = await openBrowser();

if (browser) {
  let lab: OpenLab;
  before(async () => {
    lab = await openLab({ demo: true });
    await keep('Many lines', manyLines());
    await keep(LONG, 'Refs,Value\nR1,4k7 1% 0805');
  });
  after(async () => {
    await lab.close();
    await browser.close();
  });

  /** Keeps a BOM as a board, as a program would. */
  const keep = async (board: string, bom: string): Promise<void> => {
    const words = new URLSearchParams({ name: 'bom.csv', board, id: crypto.randomUUID() });
    const answer = await fetch(`${lab.url}api/boards?${words}`, {
      method: 'POST',
      headers: { 'content-type': 'application/octet-stream' },
      body: bom,
    });
    assert.equal(answer.status, 201, await answer.text());
  };
  const open = async (path: string, how: BrowserContextOptions = { viewport: WIDE }): Promise<Page> => {
    const context = await browser.newContext(how);
    const page = await context.newPage();
    await page.goto(lab.url + path);
    await page.getByRole('heading', { level: 1 }).waitFor();
    return page;
  };
  const answers = (page: Page, sentence: string | RegExp): Promise<void> =>
    page.getByRole('heading', { level: 1, name: sentence }).waitFor();

  for (const viewport of [WIDE, PHONE]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      void test(`the boards and the line of one have no fault that axe knows at ${viewport.width} px, ${colorScheme}`, async () => {
        const page = await open('boards', { viewport, colorScheme });
        const faults = watchPage(page, lab.url);
        await page.getByText('can build').first().waitFor({ state: 'attached' });
        await clean(page);
        await page.goto(`${lab.url}${LOGGER}?boards=8&row=11&show=others`);
        await page.getByRole('heading', { name: 'Line 11: F1' }).waitFor();
        await page.getByRole('button', { name: 'Accept bag 214' }).waitFor();
        await clean(page);
        assert.deepEqual(faults, []);
        await page.context().close();
      });
    }
  }

  void test('a check is accepted by its key, another page sees it at once, and it is undone', async () => {
    const page = await open(`${LOGGER}?boards=3&row=11`);
    const other = await open(`${LOGGER}?boards=3`);
    const row = (of: Page) => of.locator('tr', { has: of.locator('[data-row="11"]') });
    await row(other).getByText('check', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Accept bag 214' }).waitFor();
    await page.keyboard.press('a');
    await page.getByText('Bag 214 is accepted for line 11.').waitFor();
    await row(other).getByText('accepted', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back. It stands as before.').waitFor();
    await row(other).getByText('check', { exact: true }).waitFor();
    await page.context().close();
    await other.context().close();
  });

  void test('another bag is put beside the line before it is taken, and the choice is taken back', async () => {
    const page = await open('boards/Greenhouse%20node?boards=2&row=5');
    await page.getByRole('button', { name: 'Other bag' }).click();
    await page.getByRole('table', { name: 'Other bags for line 5' }).getByRole('link', { name: 'bag 40' }).click();
    await page.getByRole('columnheader', { name: 'Bag 40' }).waitFor();
    assert.match(page.url(), /bag=40/);
    await page.getByRole('button', { name: 'Take bag 40' }).click();
    await page.getByText('Bag 40 is taken for line 5.').waitFor();
    await page.locator('tr.on').getByRole('link', { name: 'bag 40' }).waitFor();
    await page.getByRole('button', { name: 'Take the choice back' }).click();
    await page.locator('tr.on').getByRole('link', { name: 'bag 23' }).waitFor();
    await page.context().close();
  });

  void test('a bag that does not serve is taken with a reason only, which is shown', async () => {
    const page = await open('boards/Greenhouse%20node?boards=2&row=6&show=others');
    await page.getByLabel('Bag by its number').fill('1o');
    await page.getByRole('button', { name: 'Look at it' }).click();
    await page.getByText('“1o” is no bag number.').waitFor();
    await page.getByLabel('Bag by its number').fill('23');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Take bag 23 all the same' }).click();
    await page.getByText('It does not serve by the facts. Say why first.').waitFor();
    await page.getByLabel('Why it is taken all the same').fill('the divider is trimmed anyway');
    await page.keyboard.press('Enter');
    await page.locator('tr.on').getByText('the divider is trimmed anyway').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('tr.on').getByRole('link', { name: 'bag 27' }).waitFor();
    await page.context().close();
  });

  void test('fit later, and again, by its key; then a kit can be planned, and its page opens', async () => {
    const page = await open(`${LOGGER}?boards=3&row=9`);
    await answers(page, 'Tide logger: you can build none of 3.');
    assert.equal(await page.getByRole('button', { name: /^Plan a kit/ }).isDisabled(), true);
    await page.getByText('Before a kit: accept 1 check').waitFor();
    await page.getByRole('button', { name: 'Fit later' }).waitFor();
    await page.keyboard.press('f');
    await page.getByRole('rowheader', { name: /^Fit later/ }).waitFor();
    await page.getByRole('button', { name: 'Fit again' }).waitFor();
    await page.keyboard.press('f');
    await page.getByText('Line 9 is fitted again.').waitFor();
    await page.getByRole('button', { name: 'Fit later' }).click();
    await page.locator('[data-row="11"]').click();
    await page.getByRole('button', { name: 'Accept bag 214' }).click();
    await answers(page, 'Tide logger: you can build all 3.');
    await page.getByRole('textbox', { name: 'Boards to build' }).fill('9');
    await page.keyboard.press('Enter');
    await answers(page, /^Tide logger: you can build \d of 9\.$/);
    assert.match(page.url(), /boards=9/);
    await page.reload();
    await answers(page, /^Tide logger: you can build \d of 9\.$/);
    await page.getByRole('heading', { name: 'Line 11: F1' }).waitFor();
    await page.getByRole('textbox', { name: 'Boards to build' }).fill('1');
    await page.keyboard.press('Enter');
    await answers(page, 'Tide logger: you can build one.');
    await page.getByRole('button', { name: 'Plan a kit for 1' }).click();
    await page.waitForURL(/\/kits\/[0-9a-f-]{36}$/);
    await page.context().close();
  });

  void test('the arrows walk the lines with the focus, a typed number jumps to its bag, Escape closes', async () => {
    const page = await open(`${LOGGER}?boards=3`);
    await page.locator('[data-row="3"]').waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.getByRole('heading', { name: 'Line 3: C1, C2' }).waitFor();
    assert.equal(await page.evaluate(() => document.activeElement?.getAttribute('data-row')), '3');
    await page.keyboard.type('173');
    await page.getByRole('heading', { name: 'Line 27: U1' }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('heading', { name: 'Line 27: U1' }).waitFor({ state: 'detached' });
    await page.context().close();
  });

  void test('on a phone a line is a view of its own: Back of the browser comes back to the very place of the list', async () => {
    const page = await open(`${LOGGER}?boards=3`, { viewport: PHONE, hasTouch: true });
    await page.locator('[data-row="20"]').scrollIntoViewIfNeeded();
    const place = await page.evaluate(() => scrollY);
    await page.locator('[data-row="20"]').tap();
    await page.getByRole('heading', { name: 'Line 20: R4' }).waitFor();
    assert.equal(
      await page.locator('table.lines').evaluate((list) => list.closest('[inert]') !== null),
      true,
      'the list under it takes no focus',
    );
    await page.getByRole('heading', { name: 'How many boards each line reaches' }).waitFor();
    await page.goBack();
    await page.getByRole('heading', { name: 'Line 20: R4' }).waitFor({ state: 'detached' });
    assert.equal(await page.evaluate(() => scrollY), place);
    await page.context().close();
  });

  void test(`of ${MANY} lines the page holds those near the window, all of them count, and paper gets the whole`, async () => {
    const page = await open('boards/Many%20lines?boards=2');
    await page.locator('[data-row="2"]').waitFor();
    const table = page.locator('table.lines');
    assert.equal(await table.getAttribute('aria-rowcount'), String(MANY + 1));
    assert.ok((await page.locator('[data-row]').count()) < 80);
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await page.locator(`[data-row="${MANY + 1}"]`).waitFor();
    assert.equal(await page.locator(`tr:has([data-row="${MANY + 1}"])`).getAttribute('aria-rowindex'), String(MANY + 1));
    await page.goto(`${lab.url}boards/Many%20lines?boards=2&row=350`);
    await page.locator('[data-row="350"]').waitFor();
    assert.equal(await page.locator('[data-row="350"]').evaluate((link) => link === document.activeElement), true);
    await page.emulateMedia({ media: 'print' });
    await page.waitForFunction((count) => document.querySelectorAll('[data-row]').length === count, MANY);
    await page.context().close();
  });

  void test('a name with slashes, umlauts and a question mark is an address like any other; an unknown one says the way on', async () => {
    const page = await open('boards');
    await page.getByRole('link', { name: LONG }).first().click();
    await answers(page, `${LONG}: you can build one.`);
    await page.reload();
    await answers(page, `${LONG}: you can build one.`);
    await page.goto(`${lab.url}boards/no%2Fsuch`);
    await answers(page, 'There is no board “no/such”.');
    await page.getByRole('link', { name: 'Go to Boards' }).click();
    await page.getByRole('table', { name: 'Boards, with what can be built now' }).waitFor();
    await page.context().close();
  });

  void test('a BOM that is dropped anywhere on Boards is read; one that is no table says why', async () => {
    const page = await open('boards');
    const drop = (name: string, text: string): Promise<void> =>
      page.evaluate(
        ([name, text]) => {
          const dataTransfer = new DataTransfer();
          dataTransfer.items.add(new File([text ?? ''], name ?? ''));
          document.querySelector('h1')?.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
        },
        [name, text],
      );
    await drop('empty.csv', '');
    await page.getByRole('alert').waitFor();
    await drop('blinker.csv', 'Refs,Value\nR1 R2,4k7 1% 0805');
    await page.waitForURL(/\/drafts\//);
    await page.context().close();
  });
}

function manyLines(): string {
  const rows = Array.from({ length: MANY }, (_, at) => `R${at + 1},${at + 10}k 1% 0805`);
  return ['Refs,Value', ...rows].join('\n');
}

async function clean(page: Page): Promise<void> {
  const wider = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
  assert.equal(wider, false, 'nothing sticks out sideways');
  const { violations } = await new AxeBuilder({ page }).analyze();
  assert.deepEqual(
    violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]),
    [],
  );
}
