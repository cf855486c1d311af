import { execFile, execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { chromiumPath } from '../e2e/browser.ts';

const FOLDER = fileURLToPath(new URL('lighthouse/', import.meta.url));
const MAIN = join(FOLDER, 'node_modules', 'lighthouse', 'cli', 'index.js');
const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;
const run = promisify(execFile);

export type Scores = Readonly<Record<(typeof CATEGORIES)[number], number>>;

/** Lighthouse's scores of a page, 0 to 100. It stands outside the main lock and is installed from its own at the first run. */
export async function audit(url: string, profile: 'phone' | 'desktop'): Promise<Scores> {
  if (!existsSync(MAIN))
    execFileSync('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund'], { cwd: FOLDER, stdio: 'inherit' });
  const folder = mkdtempSync(join(tmpdir(), 'bagatelle-audit-'));
  const out = join(folder, 'report.json');
  const words = [
    MAIN,
    url,
    '--quiet',
    '--output=json',
    `--output-path=${out}`,
    '--chrome-flags=--headless=new --no-sandbox --disable-gpu',
  ];
  if (profile === 'desktop') words.push('--preset=desktop');
  try {
    await run(process.execPath, words, { env: { ...process.env, CHROME_PATH: chromiumPath() ?? '' }, timeout: 180_000 });
    return scoresIn(JSON.parse(readFileSync(out, 'utf8')));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function scoresIn(report: { readonly categories: Readonly<Record<string, { readonly score: number | null }>> }): Scores {
  const score = (name: string): number => Math.round((report.categories[name]?.score ?? 0) * 100);
  return {
    performance: score('performance'),
    accessibility: score('accessibility'),
    'best-practices': score('best-practices'),
    seo: score('seo'),
  };
}
