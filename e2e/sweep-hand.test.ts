import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBrowser, PHONE } from './browser.ts';
import { openLab } from './lab.ts';
import { axeFaults, layoutFaults } from './page-faults.ts';
import { dark, LONG, over } from './sweep.ts';

const browser = await openBrowser();

if (browser)
  void test('every page in every state in the hand: no fault that axe knows, nothing wider than 390 px, each target large enough for a finger', async (t) => {
    const lab = await openLab({ demo: true });
    t.after(async () => {
      await browser.close();
      await lab.close();
    });
    const found = await over(browser, lab, PHONE, async (page) => [
      ...(LONG ? await axeFaults(page) : []),
      ...(await dark(page, axeFaults)),
      ...(await layoutFaults(page, { fingers: true })),
    ]);
    assert.deepEqual(found, []);
  });
