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
  const answer = (page: Page, words: RegExp): Promise<void> => page.getByRole('heading', { level: 1, name: words }).waitFor();
  const fact = (page: Page, name: string): Promise<string> =>
    page.locator('.facts dt', { hasText: name }).first().locator('xpath=following-sibling::dd[1]').innerText();
  const rowNames = (page: Page): Promise<string[]> =>
    page.locator('.bags td.t').evaluateAll((cells) => cells.map((cell) => cell.textContent.replace(/\D/g, '')));

  for (const [kind, name] of [
    [DESK, '1440 px'],
    [PHONE, '390 px'],
  ] as const) {
    for (const colorScheme of ['light', 'dark'] as const) {
      void test(`finds a part by any notation at ${name}, ${colorScheme}, with its drawer, and no fault that axe knows`, async () => {
        const page = await open('', kind);
        const faults = watchPage(page, lab.url);
        await page.emulateMedia({ colorScheme });
        await page.getByRole('searchbox').fill('4k7 0805');
        await answer(page, /^2 bags hold it: 514 on hand\.$/);
        await page.getByText('Same value, another package').waitFor();
        assert.deepEqual(await axeFaults(page), []);
        await page.getByRole('link', { name: '4.7 kΩ ±1 %' }).first().click();
        await page.getByRole('complementary', { name: 'Bag 23' }).getByText('Box A, 23rd of 60').waitFor();
        assert.equal(await page.evaluate(() => location.search), '?words=4k7+0805&bag=23');
        assert.deepEqual(await axeFaults(page), []);
        assert.deepEqual(await layoutFaults(page, { fingers: kind === PHONE }), []);
        assert.deepEqual(faults, []);
        await page.context().close();
      });
    }
  }

  void test('the address follows the typing without a step of Back for each key; Back and a reload come to the same place', async () => {
    const page = await open('keys');
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.keyboard.press('/');
    await page.waitForFunction(() => document.activeElement?.matches('input[type=search]') && location.search === '');
    await page.keyboard.type('100n', { delay: 60 });
    await page.waitForFunction(() => location.search === '?words=100n');
    await page.keyboard.press('ArrowDown');
    await page.getByRole('complementary').waitFor();
    await page.reload();
    await page.getByRole('complementary').waitFor();
    assert.equal(await page.getByRole('searchbox').inputValue(), '100n');
    await page.goBack();
    await page.getByRole('complementary').waitFor({ state: 'detached' });
    assert.equal(await page.getByRole('searchbox').inputValue(), '100n');
    await page.goBack();
    await page.waitForURL(/\/keys$/);
    await page.context().close();
  });

  void test('up and down walk the rows, Escape closes and then clears, a typed number jumps to its bag', async () => {
    const page = await open('?words=4k7+0805');
    await answer(page, /2 bags hold it/);
    const [first, second] = await rowNames(page);
    await page.keyboard.press('ArrowDown');
    await page.getByRole('complementary', { name: `Bag ${first}`, exact: true }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.getByRole('complementary', { name: `Bag ${second}`, exact: true }).waitFor();
    assert.equal(await page.evaluate(() => document.activeElement?.id), `row-${second}`);
    await page.keyboard.press('Escape');
    await page.getByRole('complementary').waitFor({ state: 'detached' });
    await page.keyboard.press('Escape');
    await answer(page, /^258 bags in 5 boxes\.$/);
    await page.keyboard.type('145');
    await page.getByRole('complementary', { name: 'Bag 145' }).waitFor();
    await page.context().close();
  });

  void test('pick, undo, return and count by keys alone change the answer', async () => {
    const page = await open('?bag=72');
    assert.equal(await fact(page, 'On hand'), '87');
    await page.keyboard.press('p');
    await page.keyboard.type('1+2');
    await page.keyboard.press('Enter');
    await page
      .getByRole('button', { name: /^Undo: picked 3, today/ })
      .first()
      .waitFor();
    assert.equal(await fact(page, 'On hand'), '84');
    assert.equal(new URL(page.url()).search, '?bag=72');
    await page.keyboard.press('u');
    await page.locator('.facts dd', { hasText: '87' }).first().waitFor();
    await page.keyboard.press('u');
    await page.keyboard.press('t');
    await page.keyboard.type('5');
    await page.keyboard.press('Enter');
    await page.locator('.facts dd', { hasText: '92' }).first().waitFor();
    await page.keyboard.press('c');
    await page.keyboard.type('47+31+12');
    await page.getByText('47 + 31 + 12 = 90').waitFor();
    await page.keyboard.press('Enter');
    await page.locator('.facts dd', { hasText: '90' }).first().waitFor();
    const moves = await page.locator('.moves tbody tr').allInnerTexts();
    assert.match(moves[0] ?? '', /today\s+counted\s+−2\s+90/);
    assert.match(moves[1] ?? '', /today\s+put back\s+\+5\s+92/);
    assert.match(moves[2] ?? '', /picked undo\s+\+3\s+87/);
    await page.context().close();
  });

  void test('Escape leaves a form and books nothing; an empty or foul number says what to type', async () => {
    const page = await open('?bag=40&act=pick');
    await page.getByLabel('How many').fill('1O');
    await page.getByText('“1O” has a letter in it. Type 10.').waitFor();
    await page.getByLabel('How many').fill('');
    await page.keyboard.press('Enter');
    await page.getByText('Type how many.').waitFor();
    await page.keyboard.press('Escape');
    await page.getByLabel('How many').waitFor({ state: 'detached' });
    assert.equal(await fact(page, 'On hand'), '50');
    await page.context().close();
  });

  void test('more than the record has is refused with what is there; "I have them in my hand" books it and asks for a count', async () => {
    const page = await open('?bag=50&act=pick');
    await page.getByLabel('How many').fill('100');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'I have them in my hand' }).click();
    await page.locator('.facts dd.sum', { hasText: /^0$/ }).first().waitFor();
    await page.getByText('To count:').waitFor();
    await page.context().close();
  });

  void test('a count is of what was there when it began: a pick meanwhile is said and comes off it', async () => {
    const page = await open('?bag=43&act=count');
    await page.getByLabel('How many are in it').fill('100');
    lab.command('pick', '43', '4');
    await page.getByText('It moved while you counted: picked 4.').waitFor();
    await page.getByLabel('How many are in it').press('Enter');
    await page.getByLabel('How many are in it').waitFor({ state: 'detached' });
    assert.equal(await fact(page, 'On hand'), '96');
    await page.context().close();
  });

  void test('on a phone the bag is a view of its own over the list, and Back closes it', async () => {
    const page = await open('?words=4k7+0805', PHONE);
    await answer(page, /2 bags hold it/);
    await page.getByRole('link', { name: '4.7 kΩ ±1 %' }).first().tap();
    const drawer = page.getByRole('complementary', { name: 'Bag 23' });
    await drawer.waitFor();
    const box = await drawer.boundingBox();
    assert.ok(box && box.y < 80 && box.width === 390, JSON.stringify(box));
    await page.goBack();
    await drawer.waitFor({ state: 'detached' });
    await answer(page, /2 bags hold it/);
    await page.context().close();
  });

  void test('nothing like it says what was read and how to ask; a bag that is not there says so', async () => {
    const page = await open('?words=zzyzx');
    await answer(page, /^No bag holds “zzyzx”\.$/);
    await page.getByText('Ask with fewer words.').waitFor();
    await page.goto(`${lab.url}?words=3k48`);
    await answer(page, /^No bag holds 3\.48 kΩ resistor\.$/);
    await page.getByText('value 3.3 kΩ, near 3.48 kΩ').first().waitFor();
    await page.goto(`${lab.url}?bag=99999`);
    await page.getByText('There is no bag 99999.').waitFor();
    await page.context().close();
  });

  void test('an empty lab goes to its beginning, and an open page follows what another process does', async () => {
    const page = await browser.newPage();
    await page.goto(empty.url);
    await page.waitForURL(/\/begin$/);
    empty.command('receive', '--box', 'A', '100 4k7 1% 0805');
    await page.goto(`${empty.url}?bag=1`);
    await page.locator('.facts dd.sum', { hasText: '100' }).first().waitFor();
    empty.command('pick', '1', '4');
    await page.locator('.facts dd.sum', { hasText: '96' }).first().waitFor();
    await page.close();
  });
}
