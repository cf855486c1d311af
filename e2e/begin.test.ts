import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser, Page } from '@playwright/test';
import { KINDS, openBrowser } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';
import { loseAnswers } from './lose-answers.ts';
import { axeFaults, layoutFaults, watchPage } from './page-faults.ts';

const browser: Browser | null = await openBrowser();

/** A list as people write them: no head over the fourth column, a bare number, an estimate, a line that is no part. */
const LIST = [
  'Bag;What;Pcs;Shelf',
  '11;4k7 1% 0805;about 50;left',
  '12;100n X7R 50V 0805;1240;left',
  '13;4,7;12;right',
  '14;M3x8 screw;180;right',
  '15;BC547B TO-92;40;right',
].join('\n');
const BOM = ['Refs,Val,Shape,Pcs', 'R1 R2,4k7 1%,0805,2', 'C1,"4,7",0805,1', 'R3,10k,0805,1'].join('\n');

if (browser) {
  let lab: OpenLab;
  before(async () => {
    lab = await openLab({ demo: false });
  });
  after(async () => {
    await lab.close();
    await browser.close();
  });

  void test('an empty lab is begun with a list: its columns put right, its doubts answered, its bags made by one act and taken back by one', async () => {
    const page = await browser.newPage();
    const faults = watchPage(page, lab.url);
    await page.goto(`${lab.url}begin`);
    await page.getByRole('heading', { name: 'How shall the lab begin?' }).waitFor();
    await bring(page, 'Choose a list', 'shelf.csv', LIST);
    await page.getByRole('heading', { name: /^5 lines read\./ }).waitFor();

    const pieces = page.getByLabel('Column 3, headed “Pcs”, holds');
    const was = await pieces.inputValue();
    await pieces.selectOption('other');
    await page.getByText('as you said').first().waitFor();
    await pieces.selectOption(was);
    await page.locator('.read td[data-as=n]').getByText('1240').waitFor();

    // the doubts, by keyboard: Enter goes to the first, E says what it is
    await page.getByRole('heading', { level: 1 }).click();
    await page.keyboard.press('Enter');
    const asked = page.locator('tr.on');
    await asked.waitFor();
    assert.equal(await asked.locator('[data-as=idx]').innerText(), '2');
    await asked.getByRole('button', { name: /^about 50, to be counted/ }).press('Enter');
    await page.locator('tr.on [data-as=idx]', { hasText: /^4$/ }).waitFor();
    await page.keyboard.press('e');
    await page.getByLabel('What should stand there').fill('resistor');
    await page.keyboard.press('Enter');
    await page.getByText('You said: resistor.').waitFor();
    await page.getByRole('heading', { name: '5 lines read. None needs a word from you.' }).waitFor();
    await page.reload();
    await page.getByText('You said: right as it was read.').first().waitFor();

    await page.getByLabel('Box for lines that name none').fill('A');
    await page.getByLabel('Box for lines that name none').press('Enter');
    await page.locator('.read td[data-as=sub]', { hasText: /^A/ }).first().waitFor();
    await page.getByRole('button', { name: 'Make 5 bags' }).click();
    await page.getByRole('heading', { name: /^5 bags were made, 11 to 15,/ }).waitFor();
    assert.equal((await bags(lab)).length, 5);
    await page.getByRole('button', { name: 'Take it back' }).click();
    await page.getByRole('heading', { name: '5 bags are taken back.' }).waitFor();
    assert.deepEqual(await bags(lab), []);
    assert.deepEqual(
      faults.filter((fault) => !/status of (?:404|410)/.test(fault)),
      [],
    );
    await page.close();
  });

  void test('the demo lab is opened by one press, and cleared again with its backup named', async () => {
    const own = await openLab({ demo: false });
    const page = await browser.newPage();
    await page.goto(`${own.url}begin`);
    await page.getByRole('button', { name: 'Open the demo lab' }).click();
    await page.getByRole('heading', { name: 'Filling the demo lab…' }).waitFor();
    await page.waitForURL(own.url, { timeout: 120_000 });
    assert.ok((await bags(own)).length > 200);
    await page.goto(`${own.url}begin`);
    await page.getByRole('button', { name: 'Clear the demo lab' }).click();
    await page.getByText(/All of it is kept in the backup \S+/).waitFor({ timeout: 60_000 });
    await page.getByRole('heading', { name: 'How shall the lab begin?' }).waitFor();
    assert.deepEqual(await bags(own), []);
    await page.close();
    await own.close();
  });

  void test('what is said of a list while the lab is away is kept on the page and told when it is back', async () => {
    const page = await browser.newPage();
    await openDraft(page, lab, 'list', LIST);
    await page.route('**/api/drafts/*', (route) => (route.request().method() === 'PATCH' ? route.abort() : route.continue()));
    await page.getByLabel('Box for lines that name none').fill('Workshop');
    await page.getByLabel('Box for lines that name none').press('Enter');
    await page.getByText('The lab does not answer.').waitFor();
    assert.equal(await page.getByLabel('Box for lines that name none').inputValue(), 'Workshop');
    await page.unroute('**/api/drafts/*');
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.locator('.read td[data-as=sub]').getByText('Workshop').first().waitFor();
    await page.close();
  });

  void test('bags are made once by a double press, and the next list of the same visit is shown', async () => {
    const page = await browser.newPage();
    await openDraft(page, lab, 'list', LIST);
    await page.route('**/api/drafts/*', async (route) => {
      if (route.request().method() === 'PATCH') await new Promise((wake) => setTimeout(wake, 1000));
      await route.continue();
    });
    await page.getByLabel('Box for lines that name none').fill('A');
    await page.getByLabel('Box for lines that name none').press('Enter');
    await page.getByRole('button', { name: 'Make 5 bags' }).dblclick();
    await page.getByRole('heading', { name: /^5 bags were made, 11 to 15,/ }).waitFor();
    await page.getByRole('button', { name: 'Take it back' }).click();
    await page.getByRole('heading', { name: '5 bags are taken back.' }).waitFor();
    await bring(page, 'Bring a list', 'again.csv', LIST);
    await page.getByRole('heading', { name: /^5 lines read\./ }).waitFor();
    await page.close();
  });

  void test('a BOM whose answer is lost is kept once, and the second try opens its board', async () => {
    const page = await browser.newPage();
    await openDraft(page, lab, 'bom', BOM);
    await page.getByLabel('Board', { exact: true }).fill('Rain gauge');
    await page.getByLabel('Board', { exact: true }).press('Enter');
    const hearAgain = await loseAnswers(page, '**/keep');
    await page.getByRole('button', { name: /^Keep as Rain gauge/ }).click();
    await page.getByText('The lab does not answer.').waitFor();
    await hearAgain();
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.waitForURL(/\/boards\/Rain/);
    await page.close();
  });

  void test('a BOM that another changed meanwhile is shown anew before it is kept', async () => {
    const page = await browser.newPage();
    await openDraft(page, lab, 'bom', BOM);
    await page.getByLabel('Board', { exact: true }).fill('Hail gauge');
    await page.getByLabel('Board', { exact: true }).press('Enter');
    const keep = page.getByRole('button', { name: /^Keep as Hail gauge/ });
    await keep.waitFor();
    const draft = new URL(page.url()).pathname.split('/').at(-1);
    const told = await fetch(`${lab.url}api/drafts/${draft}`, {
      method: 'PATCH',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ board: 'Snow gauge' }),
    });
    assert.equal(told.status, 200);
    await keep.click();
    await page.locator('.note.stop').waitFor();
    await page.getByRole('button', { name: /^Keep as Snow gauge/ }).click();
    await page.waitForURL(/\/boards\/Snow/);
    await page.close();
  });

  void test('a number that is on a bag already stops the list, and says which', async () => {
    lab.command('receive', '--bag', '12', '--box', 'A', '10 10k 1% 0603');
    const page = await browser.newPage();
    await openDraft(page, lab, 'list', LIST);
    await page.locator('.note.stop', { hasText: '12' }).waitFor();
    await page.keyboard.press('Control+Enter');
    assert.equal((await bags(lab)).length, 1, 'nothing is made while a number is on two bags');
    await page.close();
  });

  void test('a BOM is named and kept, and its board opens', async () => {
    const page = await browser.newPage();
    await openDraft(page, lab, 'bom', BOM);
    await page.getByLabel('Board', { exact: true }).fill('Tide logger');
    await page.getByLabel('Board', { exact: true }).press('Enter');
    const keep = page.getByRole('button', { name: /^Keep as Tide logger/ });
    await keep.waitFor();
    await page.locator('.asked').first().waitFor();
    await keep.click();
    await page.waitForURL(/\/boards\/Tide/);
    const { boards } = await get<{ boards: readonly { name: string; revisions: readonly { lines: number }[] }[] }>(
      lab,
      'api/boards',
    );
    assert.deepEqual(
      boards.filter(({ name }) => name === 'Tide logger').map(({ revisions }) => revisions.map(({ lines }) => lines)),
      [[3]],
    );
    await page.close();
  });

  void test('a file whose answer is lost is brought again under the id it had', async () => {
    const page = await browser.newPage();
    const ids: (string | null)[] = [];
    await page.goto(`${lab.url}receive`);
    await page.route('**/api/drafts?*', (route) => {
      ids.push(new URL(route.request().url()).searchParams.get('id'));
      return ids.length === 1 ? route.abort() : route.continue();
    });
    await bring(page, 'Choose a list', 'shelf.csv', LIST);
    await page.getByText('The lab does not answer.').waitFor();
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByRole('heading', { name: /^5 lines read\./ }).waitFor();
    assert.match(ids[0] ?? '', /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    assert.equal(ids[1], ids[0]);
    await page.close();
  });

  void test('a file that is no list says what to bring, and nothing is read', async () => {
    const page = await browser.newPage();
    await page.goto(`${lab.url}begin`);
    await page.getByRole('heading', { name: /^This lab holds 1 bag/ }).waitFor();
    await page.evaluate(() => {
      const files = new DataTransfer();
      files.items.add(new File(['x'], 'parts.xlsx'));
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer: files, bubbles: true, cancelable: true }));
    });
    await page.getByText('“parts.xlsx” can’t be read here.').waitFor();
    await page.close();
  });

  for (const [name, options] of Object.entries(KINDS))
    void test(`no fault that axe knows, and nothing sticks out, in a list and a BOM as they are read: ${name}`, async () => {
      const context = await browser.newContext(options);
      const page = await context.newPage();
      const found: string[] = [];
      for (const is of ['list', 'bom'] as const) {
        await openDraft(page, lab, is, is === 'list' ? LIST : BOM);
        await page.getByRole('button', { name: 'Say what it is' }).first().click();
        found.push(...(await axeFaults(page)), ...(await layoutFaults(page, { fingers: 'isMobile' in options })));
      }
      assert.deepEqual(found, []);
      await context.close();
    });
}

async function bring(page: Page, button: string, name: string, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: button }).click();
  await (await chooser).setFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
}

async function openDraft(page: Page, lab: OpenLab, is: 'list' | 'bom', text: string): Promise<void> {
  const answer = await fetch(`${lab.url}api/drafts?is=${is}&name=shelf.csv`, {
    method: 'POST',
    headers: { 'content-type': 'application/octet-stream' },
    body: text,
  });
  const { draft } = (await answer.json()) as { draft: string }; // as: the API's shape
  await page.goto(`${lab.url}drafts/${draft}`);
  await page.getByRole('heading', { name: /lines read/ }).waitFor();
}

async function get<T>(lab: OpenLab, path: string): Promise<T> {
  const answer = await fetch(lab.url + path);
  return (await answer.json()) as T; // as: the API's shape
}

async function bags(lab: OpenLab): Promise<readonly { bag: number }[]> {
  return (await get<{ bags: readonly { bag: number }[] }>(lab, 'api/bags')).bags;
}
