import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import type { Browser } from '@playwright/test';
import { openBrowser } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';

const browser: Browser | null = await openBrowser();
/** 10 px a millimetre */
const DPI = 254;

if (browser) {
  let lab: OpenLab;
  before(async () => {
    lab = await openLab({ demo: true });
  });
  after(async () => {
    await lab.close();
    await browser.close();
  });

  void test('the tray sheet is printed true to size: its bar measures 100.0 mm on A4, and the walk follows the trays', async () => {
    const { builds } = (await (await fetch(`${lab.url}api/kits`)).json()) as { builds: { id: string; state: string }[] }; // as: the API's shape
    const kit = builds.find(({ state }) => state === 'reserved');
    assert.ok(kit, 'the demo has a kit that waits for its pick');
    const page = await browser.newPage();
    await page.goto(`${lab.url}kits/${kit.id}/sheet`);
    await page.locator('.paper').first().waitFor();
    const folder = mkdtempSync(join(tmpdir(), 'bagatelle-sheet-'));
    const path = join(folder, 'sheet.pdf');
    await page.pdf({ path, preferCSSPageSize: true, printBackground: true });
    await page.close();
    execFileSync('pdftoppm', ['-gray', '-r', String(DPI), '-f', '1', '-l', '1', path, join(folder, 'page')]);
    const words = execFileSync('pdftotext', [path, '-'], { encoding: 'utf8' });
    const first = execFileSync('sh', ['-c', `ls ${folder}/page*.pgm`], { encoding: 'utf8' }).trim();
    const { width, height, runs } = longestRuns(readFileSync(first));
    rmSync(folder, { recursive: true });
    assert.deepEqual([Math.round(width / 10), Math.round(height / 10)], [210, 297], 'A4');
    const bar = Math.max(...runs.slice(0, 500));
    assert.ok(Math.abs(bar - 1000) <= 3, `the bar measures ${bar / 10} mm`);
    assert.ok(words.indexOf('Tray') < words.indexOf('The walk'), 'tray first, then the walk');
  });
}

/** The longest unbroken dark run of each row of a PGM picture (P5, Netpbm). */
function longestRuns(bytes: Buffer): { readonly width: number; readonly height: number; readonly runs: readonly number[] } {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('pdftoppm made no PGM');
  const [width, height] = [Number(head[1]), Number(head[2])];
  const start = head[0].length;
  const runs = Array.from({ length: height }, (_, row) => {
    let [longest, run] = [0, 0];
    for (let at = start + row * width; at < start + (row + 1) * width; at += 1) {
      run = (bytes[at] ?? 255) < 128 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  });
  return { width, height, runs };
}
