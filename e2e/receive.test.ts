import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser, Page } from '@playwright/test';
import { KINDS, openBrowser } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';
import { loseAnswers } from './lose-answers.ts';
import { axeFaults, layoutFaults, watchPage } from './page-faults.ts';

const browser: Browser | null = await openBrowser();

if (browser) {
  let lab: OpenLab;
  before(async () => {
    lab = await openLab({ demo: false });
  });
  after(async () => {
    await lab.close();
    await browser.close();
  });

  void test('a box is walked by keyboard alone: type, Enter, and the next bag is asked for; each has its way back', async () => {
    const page = await browser.newPage();
    const faults = watchPage(page, lab.url);
    await page.goto(`${lab.url}receive?box=A`);
    await page.getByRole('heading', { name: 'Bag 1 is next, for box A.' }).waitFor();
    await takeIn(page, '4k7 1% 0805', '47+31');
    await page.getByRole('heading', { name: /^Bag 1 is in: 78 of 4.7.kΩ/ }).waitFor();
    await takeIn(page, '100n 50V X7R 0805', '1240');
    await page.getByRole('heading', { name: /^Bag 2 is in: 1240 of 100.nF/ }).waitFor();
    assert.equal(await page.getByLabel('Bag number').inputValue(), '3');
    assert.deepEqual(await shelf(lab), [
      { bag: 1, box: 'A', onHand: 78 },
      { bag: 2, box: 'A', onHand: 1240 },
    ]);

    await page.getByRole('button', { name: 'Take back bag 2' }).press('Enter');
    await page.getByText('taken back').waitFor();
    assert.deepEqual(await shelf(lab), [{ bag: 1, box: 'A', onHand: 78 }]);
    await page.reload();
    await page.getByText('taken back').waitFor();
    assert.deepEqual(faults, []);
    await page.close();
  });

  void test('a number that is on a bag is said with that bag, and the pieces can be added to it', async () => {
    const page = await browser.newPage();
    await page.goto(`${lab.url}receive?box=A`);
    const before = await onHand(lab, 1);
    await page.getByLabel('Bag number').fill('1');
    await page.getByText('Number 1 is on a bag already.').waitFor();
    await page.getByLabel('What it says').fill('4k7 1% 0805');
    await page.getByLabel('How many').fill('20');
    await page.keyboard.press('Enter');
    assert.equal(await onHand(lab, 1), before, 'Enter books nothing over a bag that is there');
    await page.getByRole('button', { name: 'Add 20 to bag 1' }).click();
    await page.getByRole('heading', { name: /^20 added to bag 1/ }).waitFor();
    assert.equal(await onHand(lab, 1), before + 20);
    await page.close();
  });

  void test('pieces are added once, though nothing can be read of the bag after it; a lost undo is tried again and shown', async () => {
    lab.command('receive', '--bag', '70', '--box', 'A', '12 4k7 0805');
    const page = await browser.newPage();
    await page.goto(`${lab.url}receive?box=A&bag=70&says=4k7+0805`);
    const before = await onHand(lab, 70);
    await page.getByLabel('How many').fill('20');
    await page.route('**/api/bags/70', (route) => route.abort());
    await page.getByRole('button', { name: 'Add 20 to bag 70' }).click();
    await page.getByRole('heading', { name: /^20 added to bag 70/ }).waitFor();
    assert.equal(await page.getByLabel('How many').inputValue(), '');
    assert.equal(await onHand(lab, 70), before + 20);

    const hearAgain = await loseAnswers(page, '**/api/undo');
    await page.getByRole('button', { name: 'Take back' }).first().click();
    await page.getByText('The lab does not answer.').waitFor();
    await hearAgain();
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByText('taken back').first().waitFor();
    assert.equal(await onHand(lab, 70), before);
    await page.close();
  });

  void test('what is typed is read back with its doubts, an estimate is kept as one, and what is missing is asked for', async () => {
    const page = await browser.newPage();
    await page.goto(`${lab.url}receive?box=B`);
    await page.getByLabel('What it says').fill('4,7 0805');
    await page.locator('.readas .note.check').first().waitFor();
    await page.keyboard.press('Enter');
    await page.getByText('Type how many; 0 where it is empty.').waitFor();
    await page.getByLabel('How many').fill('1O');
    await page.getByText('“1O” has a letter in it. Type 10.').waitFor();
    await page.getByLabel('How many').fill('50');
    await page.getByLabel('about').check();
    await page.getByLabel('How many').press('Enter');
    await page.getByRole('heading', { name: /is in: about 50 of/ }).waitFor();
    await page.locator('.taken .why').first().waitFor();
    const bag = (await bags(lab)).find(({ box }) => box === 'B');
    assert.deepEqual([bag?.onHand, bag?.sure], [50, 0]);
    await page.close();
  });

  void test('what was typed stays while the lab is away, and the second try books it once', async () => {
    const page = await browser.newPage();
    await page.goto(`${lab.url}receive?box=C`);
    await page.getByLabel('What it says').fill('M3x8 screw');
    await page.getByLabel('How many').fill('100');
    // the lab books it, and its answer is lost on the way
    const hearAgain = await loseAnswers(page, '**/api/bags');
    await page.getByLabel('How many').press('Enter');
    await page.getByText('The lab does not answer.').waitFor();
    assert.equal(await page.getByLabel('What it says').inputValue(), 'M3x8 screw');
    await hearAgain();
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByRole('heading', { name: /is in: 100 of/ }).waitFor();
    assert.equal((await bags(lab)).filter(({ box }) => box === 'C').length, 1);
    assert.equal(await page.getByLabel('What it says').inputValue(), '');
    await page.close();
  });

  for (const [name, options] of Object.entries(KINDS))
    void test(`no fault that axe knows while a bag with a doubt is typed over a number that is taken: ${name}`, async () => {
      const context = await browser.newContext(options);
      const page = await context.newPage();
      await page.goto(`${lab.url}receive?box=A&bag=1&says=4,7+0805`);
      await page.getByText('Number 1 is on a bag already.').waitFor();
      await page.locator('.readas .note.check').first().waitFor();
      const fingers = 'isMobile' in options;
      assert.deepEqual([...(await axeFaults(page)), ...(await layoutFaults(page, { fingers }))], []);
      await context.close();
    });
}

async function takeIn(page: Page, says: string, many: string): Promise<void> {
  assert.equal(await page.getByLabel('What it says').evaluate((field) => field === document.activeElement), true);
  await page.keyboard.type(says);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.type(many);
  await page.keyboard.press('Enter');
}

interface Bag {
  readonly bag: number;
  readonly box: string | null;
  readonly onHand: number;
  readonly sure: number;
}

async function bags(lab: OpenLab): Promise<readonly Bag[]> {
  const answer = await fetch(`${lab.url}api/bags`);
  return ((await answer.json()) as { bags: readonly Bag[] }).bags; // as: the API's shape
}

async function shelf(lab: OpenLab): Promise<readonly Omit<Bag, 'sure'>[]> {
  return (await bags(lab)).map(({ bag, box, onHand }) => ({ bag, box, onHand }));
}

async function onHand(lab: OpenLab, number: number): Promise<number> {
  return (await bags(lab)).find(({ bag }) => bag === number)?.onHand ?? 0;
}
