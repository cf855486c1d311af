import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeDelimited } from './delimited.ts';
import { expect, milliseconds, quantile, type Bench, type Measured } from './bench.ts';
import { syntheticBom } from './match.ts';
import { audit } from './page-audit.ts';
import { firstScript } from './first-script.ts';
import { MEASURE_FRAMES, MEASURE_KEYS, RAW_KEYS } from './page-scripts.ts';
import { syntheticStock } from './synthetic-stock.ts';
import { openBrowser } from '../e2e/browser.ts';
import { openLab, type OpenLab } from '../e2e/lab.ts';
import type { Browser, Page } from '@playwright/test';

const BAGS = 5_000;
const LINES = 400;
const BOARD = 'Four hundred lines';
const TYPED = ['4k7 0805', '100n 50v', 'norvik', '22p', '1206 1%', 'bag 1200', '10u 25v x7r', '100k'];
const MOST_KEY_MS = 100;
const LONG_FRAME_MS = 50;
const MOST_SCRIPT = 190_000;
const LEAST_SCORE = 95;

/** What a page feels like, in Chromium, with a large lab behind it; beside each the raw limit of the same browser in the same run. */
export const bench: Bench = {
  name: 'pages',
  about: `Chromium at 1440 px, a lab of ${BAGS} bags and a board of ${LINES} lines. Other: the same browser with a page that shows the lab's bare answer, or scrolls a plain table. Lighthouse 12.2.3, its phone and its desktop profile.`,
  async run(tell) {
    const browser = await openBrowser();
    if (!browser) throw new Error('this bench needs Chromium');
    tell(`pages: a lab of ${BAGS} bags`);
    const lab = await filledLab();
    try {
      tell('pages: typing in Find');
      const keys = await typing(browser, lab);
      tell(`pages: scrolling ${LINES} lines`);
      const frames = await scrolling(browser, lab);
      const script = scriptSize();
      const scores = await scoresOf(lab, tell);
      return [keys, frames, script, ...scores];
    } finally {
      await lab.close();
      await browser.close();
    }
  },
};

/** The lab as files that a person could have, taken in by the commands. */
async function filledLab(): Promise<OpenLab> {
  const folder = mkdtempSync(join(tmpdir(), 'bagatelle-bench-'));
  const stock = syntheticStock(BAGS);
  const list = join(folder, 'list.csv');
  const bom = join(folder, 'bom.csv');
  writeFileSync(
    list,
    writeDelimited([
      ['Bag', 'Box', 'What', 'Quantity'],
      ...stock.bags.map((bag) => [String(bag.number), bag.box ?? '', bag.part.text, String(bag.onHand)]),
    ]),
  );
  writeFileSync(
    bom,
    writeDelimited([
      ['Refs', 'Value', 'Qty'],
      ...syntheticBom(stock, LINES).map((line) => [line.refs.join(' '), line.part.text, String(line.refs.length)]),
    ]),
  );
  const lab = await openLab({ demo: false });
  lab.command('import', list);
  lab.command('save', bom, '--name', BOARD);
  rmSync(folder, { recursive: true });
  return lab;
}

async function openPage(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  return page;
}

/** From the key to the frame in which its answer is painted. */
async function typing(browser: Browser, lab: OpenLab): Promise<Measured> {
  const page = await openPage(browser, lab.url);
  await page.getByRole('searchbox').waitFor();
  await page.evaluate(MEASURE_KEYS);
  for (const words of TYPED) {
    await page.getByRole('searchbox').fill('');
    await page.waitForTimeout(300);
    for (const letter of words) {
      await page.keyboard.press(letter === ' ' ? 'Space' : letter);
      await page.waitForTimeout(220);
    }
  }
  const times = await page.evaluate<number[]>('globalThis.keyTimes');
  expect(times.length > TYPED.length * 3, `only ${times.length} keys were answered`);
  expect((await page.locator('.ledger tbody tr').count()) > 0, 'the last words found nothing');
  await page.close();
  const bare = await openPage(browser, `${lab.url}tag.svg`);
  await bare.goto(`${lab.url}keys`);
  const raw = (await bare.evaluate<number[]>(`(${RAW_KEYS})(${JSON.stringify(TYPED)})`)).toSorted((a, b) => a - b);
  await bare.close();
  const sorted = times.toSorted((a, b) => a - b);
  const [ours, other] = [quantile(sorted, 0.5), quantile(raw, 0.5)];
  const p95 = quantile(sorted, 0.95);
  return {
    what: `key to painted answer in Find, ${BAGS} bags, p50 / p95 of ${times.length}`,
    ours: `${milliseconds(ours)} / ${milliseconds(p95)}`,
    other: `${milliseconds(other)} / ${milliseconds(quantile(raw, 0.95))}`,
    ratio: `${(ours / other).toFixed(1)} ×`,
    target: `p95 < ${MOST_KEY_MS} ms`,
    ok: p95 < MOST_KEY_MS,
  };
}

/** Frames longer than 50 ms while the whole board goes by. */
async function scrolling(browser: Browser, lab: OpenLab): Promise<Measured> {
  const page = await openPage(browser, `${lab.url}boards/${encodeURIComponent(BOARD)}`);
  await page.getByRole('heading', { level: 1, name: BOARD }).waitFor();
  await page.locator('.ledger tbody tr').nth(20).waitFor();
  await page.waitForTimeout(1000);
  const frames = await page.evaluate<number[]>(MEASURE_FRAMES);
  await page.evaluate(
    `(() => { document.body.innerHTML = '<table>' + '<tr><td>a line of a plain table</td><td>12</td></tr>'.repeat(${LINES}) + '</table><style></style>'; for (const row of document.querySelectorAll('tr')) row.style.height = '40px'; scrollTo(0, 0); })()`,
  );
  await page.waitForTimeout(300);
  const plain = await page.evaluate<number[]>(MEASURE_FRAMES);
  await page.close();
  expect(frames.length > 60, `only ${frames.length} frames were seen`);
  const long = (all: readonly number[]): number => all.filter((frame) => frame > LONG_FRAME_MS).length;
  const worst = (all: readonly number[]): number => all.reduce((most, frame) => Math.max(most, frame), 0);
  return {
    what: `frames over ${LONG_FRAME_MS} ms while ${LINES} lines scroll (worst)`,
    ours: `${long(frames)} of ${frames.length} (${milliseconds(worst(frames))})`,
    other: `${long(plain)} of ${plain.length} (${milliseconds(worst(plain))})`,
    ratio: `${(worst(frames) / worst(plain)).toFixed(1)} ×`,
    target: 'none',
    ok: long(frames) === 0,
  };
}

function scriptSize(): Measured {
  const { gzip, brotli, raw } = firstScript();
  return {
    what: 'first script, gzip (brotli)',
    ours: `${(gzip / 1000).toFixed(1)} kB (${(brotli / 1000).toFixed(1)} kB)`,
    other: `${(raw / 1000).toFixed(0)} kB raw`,
    ratio: `${(gzip / raw).toFixed(2)} ×`,
    target: `≤ ${MOST_SCRIPT / 1000} kB`,
    ok: gzip <= MOST_SCRIPT,
  };
}

async function scoresOf(lab: OpenLab, tell: (progress: string) => void): Promise<Measured[]> {
  const rows: Measured[] = [];
  for (const path of ['', `boards/${encodeURIComponent(BOARD)}`, 'boxes']) {
    for (const profile of ['phone', 'desktop'] as const) {
      tell(`pages: Lighthouse on /${path}, ${profile}`);
      const scores = await audit(`${lab.url}${path}`, profile);
      const least = Math.min(...Object.values(scores));
      rows.push({
        what: `Lighthouse /${decodeURIComponent(path)}, ${profile}: ${Object.keys(scores).join(', ')}`,
        ours: Object.values(scores).join(', '),
        other: '100',
        ratio: (least / 100).toFixed(2),
        target: `≥ ${LEAST_SCORE}`,
        ok: least >= LEAST_SCORE,
      });
    }
  }
  return rows;
}
