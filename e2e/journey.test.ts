import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import type { Browser } from '@playwright/test';
import { openBrowser } from './browser.ts';
import { byKeys, byPointer } from './hands.ts';
import { eveningWith } from './evening.ts';
import { openLab } from './lab.ts';

/** Aim of the issue: under 25 actions from an empty folder to a planned kit, with a list and a BOM at hand. */
const MOST_ACTIONS = 25;

const browser: Browser | null = await openBrowser();

if (browser) {
  for (const hands of [byPointer, byKeys]) {
    void test(`a first evening, ${hands.name}: from an empty folder to three boards, each bag right to the piece`, async (context) => {
      const lab = await openLab({ demo: false });
      context.after(() => lab.close());
      const { actions, onHand } = await eveningWith(browser, lab, hands);
      process.stderr.write(`actions from an empty folder to a planned kit, ${hands.name}: ${actions}\n`);
      assert.ok(actions < MOST_ACTIONS, `${actions} actions`);
      assert.deepEqual(onHand, { 1: 240 - 6, 2: 1200 - 9, 3: 25 - 3, 4: 60 - 3, 5: 180 - 12 });
    });
  }
  after(() => browser.close());
}
