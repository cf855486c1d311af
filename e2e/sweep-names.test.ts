import assert from 'node:assert/strict';
import { test } from 'node:test';
import { DESK, openBrowser, PHONE } from './browser.ts';
import { hardLab } from './hard-lab.ts';
import { layoutFaults, stretchWords } from './page-faults.ts';
import { atWidths, over } from './sweep.ts';

const WIDTHS = [1440, 1024, 768];
const browser = await openBrowser();

if (browser)
  void test('names of 60 characters and words as long as German ones stick out of nothing and are not cut', async (t) => {
    const lab = await hardLab();
    t.after(async () => {
      await browser.close();
      await lab.close();
    });
    const atDesk = await over(browser, lab, DESK, async (page) => {
      const named = await atWidths(page, WIDTHS);
      await stretchWords(page);
      return [...named, ...(await atWidths(page, WIDTHS))];
    });
    const inHand = await over(browser, lab, PHONE, async (page) => {
      await stretchWords(page);
      return layoutFaults(page, { fingers: false });
    });
    assert.deepEqual([...atDesk, ...inHand], []);
  });
