import type { Browser, BrowserContext, Page } from '@playwright/test';
import type { DESK, PHONE } from './browser.ts';
import type { OpenLab } from './lab.ts';
import { layoutFaults, watchPage } from './page-faults.ts';
import { statesOf, type State } from './states.ts';

/** axe takes seconds a page: each run looks in one scheme at each width, the long one in both. */
export const LONG = process.env['BAGATELLE_LONG'] === '1';
const AT_ONCE = 3;

type Look = (page: Page) => Promise<string[]>;

/** What a look finds in each state, named by the state. */
export async function over(browser: Browser, lab: OpenLab, kind: typeof DESK | typeof PHONE, look: Look): Promise<string[]> {
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

export async function dark(page: Page, look: Look): Promise<string[]> {
  await page.emulateMedia({ colorScheme: 'dark' });
  const found = await look(page);
  await page.emulateMedia({ colorScheme: 'light' });
  return found.map((fault) => `dark, ${fault}`);
}

export async function atWidths(page: Page, widths: readonly number[]): Promise<string[]> {
  const found: string[] = [];
  for (const width of widths) {
    await page.setViewportSize({ width, height: 900 });
    await page.waitForTimeout(120);
    found.push(...(await layoutFaults(page, { fingers: false })).map((fault) => `${width} px, ${fault}`));
  }
  return found;
}
