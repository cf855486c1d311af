import assert from 'node:assert/strict';
import { after, before, describe, test } from 'node:test';
import type { Browser, BrowserContext, Page } from '@playwright/test';
import { DESK, PHONE, openBrowser } from './browser.ts';
import { hardLab } from './hard-lab.ts';
import { openLab, type OpenLab } from './lab.ts';
import { axeFaults, layoutFaults, strangeFonts, stretchWords, watchPage } from './page-faults.ts';
import { statesOf, type State } from './states.ts';

const browser: Browser | null = await openBrowser();
/** axe takes seconds a page: each run looks in one scheme at each width, the long one in both. */
const LONG = process.env['BAGATELLE_LONG'] === '1';
const AT_ONCE = 3;

if (browser) {
  void describe('every page in every state', () => {
    let lab: OpenLab;
    let hard: OpenLab;
    before(async () => {
      lab = await openLab({ demo: true });
      hard = await hardLab();
    });
    after(async () => {
      await lab.close();
      await hard.close();
      await browser.close();
    });

    void test('at the desk: no fault that axe knows in either scheme, nothing wider than 1440, 1024 and 768 px, every glyph our own', async () => {
      const found = await over(lab, DESK, async (page) => [
        ...(await axeFaults(page)),
        ...(await strangeFonts(page)),
        ...(LONG ? await dark(page, axeFaults) : []),
        ...(await atWidths(page, [1440, 1024, 768])),
      ]);
      assert.deepEqual(found, []);
    });

    void test('in the hand: the same at 390 px, and each target is large enough for a finger', async () => {
      const found = await over(lab, PHONE, async (page) => [
        ...(LONG ? await axeFaults(page) : []),
        ...(await dark(page, axeFaults)),
        ...(await layoutFaults(page, { fingers: true })),
      ]);
      assert.deepEqual(found, []);
    });

    void test('names of 60 characters and words as long as German ones stick out of nothing and are not cut', async () => {
      const stretched = async (page: Page): Promise<string[]> => {
        const named = await atWidths(page, [1440, 1024, 768]);
        await stretchWords(page);
        return [...named, ...(await atWidths(page, [1440, 1024, 768]))];
      };
      const inHand = async (page: Page): Promise<string[]> => {
        await stretchWords(page);
        return layoutFaults(page, { fingers: false });
      };
      assert.deepEqual([...(await over(hard, DESK, stretched)), ...(await over(hard, PHONE, inHand))], []);
    });
  });
}

type Look = (page: Page) => Promise<string[]>;

/** What a look finds in each state, named by the state. */
async function over(lab: OpenLab, kind: typeof DESK | typeof PHONE, look: Look): Promise<string[]> {
  if (!browser) return [];
  const found: string[] = [];
  // colours that are still on their way are no fault
  const context = await browser.newContext({ ...kind, reducedMotion: 'reduce' });
  const states = (await statesOf(lab)).values();
  // a page waits more than it works: a few at a time
  const worker = async (): Promise<void> => {
    for (const state of states) {
      const told = await lookAt(context, lab, state, look);
      found.push(...told.map((fault) => `${state.name}: ${fault}`));
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  await context.close();
  return found;
}

/** While a page waits for the lab its heading says so and ends in an ellipsis; no other heading does. */
const WAITS = /…$/;

async function lookAt(context: BrowserContext, lab: OpenLab, state: State, look: Look): Promise<string[]> {
  const page = await context.newPage();
  const faults = watchPage(page, lab.url);
  await page.goto(lab.url + state.path);
  const drawn = page.getByRole('heading', { level: 1 }).filter({ hasNotText: WAITS });
  await drawn.first().waitFor({ timeout: 15_000 });
  await page.waitForLoadState('domcontentloaded');
  await page.waitForTimeout(400);
  const found = [...(await look(page)), ...faults.filter((fault) => !state.refused?.test(fault))];
  await page.close();
  return found;
}

async function dark(page: Page, look: Look): Promise<string[]> {
  await page.emulateMedia({ colorScheme: 'dark' });
  const found = await look(page);
  await page.emulateMedia({ colorScheme: 'light' });
  return found.map((fault) => `dark, ${fault}`);
}

async function atWidths(page: Page, widths: readonly number[]): Promise<string[]> {
  const found: string[] = [];
  for (const width of widths) {
    await page.setViewportSize({ width, height: 900 });
    await page.waitForTimeout(120);
    found.push(...(await layoutFaults(page, { fingers: false })).map((fault) => `${width} px, ${fault}`));
  }
  return found;
}
