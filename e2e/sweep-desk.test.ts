import assert from 'node:assert/strict';
import { test } from 'node:test';
import { DESK, openBrowser } from './browser.ts';
import { openLab } from './lab.ts';
import { axeFaults, strangeFonts } from './page-faults.ts';
import { atWidths, dark, LONG, over } from './sweep.ts';

const browser = await openBrowser();

if (browser)
  void test('every page in every state at the desk: no fault that axe knows, nothing wider than 1440, 1024 and 768 px, every glyph our own', async (t) => {
    const lab = await openLab({ demo: true });
    t.after(async () => {
      await browser.close();
      await lab.close();
    });
    const found = await over(browser, lab, DESK, async (page) => [
      ...(await axeFaults(page)),
      ...(await strangeFonts(page)),
      ...(LONG ? await dark(page, axeFaults) : []),
      ...(await atWidths(page, [1440, 1024, 768])),
    ]);
    assert.deepEqual(found, []);
  });
