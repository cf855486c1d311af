import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { openBrowser } from '../e2e/browser.ts';
import { openLab } from '../e2e/lab.ts';
import { ROOT } from './steps.ts';

/**
 * Makes the pictures of docs/guide.md anew, by doing what it tells: `npm run guide`. A step that no longer works stops it, so the
 * pictures show what is there.
 */
const FOLDER = join(ROOT, 'docs', 'guide');
const DESK = { viewport: { width: 1280, height: 800 } };
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 };

const LIST = [
  'Bag,Box,What,Pieces',
  '1,A,4k7 1% 0805,240',
  '2,A,100n X7R 50V 0805,1200',
  '3,A,"LM35DZ, TO-92",25',
  '4,A,"4,7 0805",about 60',
  '5,B,LED green 0805,60',
  '6,B,M3x8 pan head screw,180',
  '7,B,10k 1% 0805,412',
].join('\n');
const BOM = [
  'Refs,Value,Qty',
  'R1 R2,4k7 1% 0805,2',
  'R3,10k 5% 0805,1',
  'C1 C2 C3,100n X7R 25V 0805,3',
  'U1,LM35DZ TO-92,1',
  'D1,LED green 0805,1',
  'MH1 MH2 MH3 MH4,M3x8 pan head screw,4',
].join('\n');

const browser = await openBrowser();
if (!browser) throw new Error('the pictures need Chromium');
mkdirSync(FOLDER, { recursive: true });
const lab = await openLab({ demo: false });
try {
  const page = await browser.newPage(DESK);
  await page.goto(lab.url);
  await page.getByRole('heading', { name: 'How shall the lab begin?' }).waitFor();
  await shoot(page, '1-begin');

  await give(page, 'Choose a list', 'shelf.csv', LIST);
  await page.getByRole('heading', { name: /lines read/ }).waitFor();
  await shoot(page, '2-list');
  await page.getByRole('button', { name: 'Make 7 bags' }).click();
  await page.getByRole('heading', { name: /bags were made/ }).waitFor();

  await page.goto(`${lab.url}?words=4k7&bag=1`);
  await page.getByRole('heading', { level: 1, name: /240 on hand/ }).waitFor();
  await shoot(page, '3-find');

  await page.goto(`${lab.url}boards`);
  await give(page, 'Bring a BOM', 'Window sensor.csv', BOM);
  await page.getByRole('button', { name: /^Keep as Window sensor/ }).click();
  await page.getByLabel('Boards to build').fill('3');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: /you can build all 3/ }).waitFor();
  await page.getByText('C1–C3').first().click();
  await shoot(page, '4-board');

  await page.getByRole('button', { name: /^Plan a kit for 3/ }).click();
  await page.waitForURL(/\/kits\//);
  await page.getByRole('heading', { name: /in the tray/ }).waitFor();
  await shoot(page, '5-kit');

  const phone = await (await browser.newContext(PHONE)).newPage();
  await phone.goto(`${page.url().split('?')[0]}/pick`);
  await phone.getByRole('button', { name: /in cell/ }).waitFor();
  await shoot(phone, '6-phone');
} finally {
  await lab.close();
  await browser.close();
}

async function give(page: Page, button: string, name: string, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: button }).click();
  await (await chooser).setFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
}

async function shoot(page: Page, name: string): Promise<void> {
  await page.waitForTimeout(600);
  await page.screenshot({ path: join(FOLDER, `${name}.png`), animations: 'disabled', caret: 'hide' });
  process.stdout.write(`docs/guide/${name}.png\n`);
}
