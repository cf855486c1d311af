import { existsSync } from 'node:fs';
import { chromium, type Browser } from '@playwright/test';

const CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Where Chromium is on this machine, or null. */
export function chromiumPath(): string | null {
  return process.env['CHROMIUM'] ?? CHROMIUM.find((path) => existsSync(path)) ?? null;
}

/** Debian's Chromium, or null with one line that says what was left out; in CI a missing one is a failure. */
export async function openBrowser(): Promise<Browser | null> {
  const executablePath = chromiumPath();
  if (executablePath)
    return chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'] });
  if (process.env['CI']) throw new Error('Chromium is missing: .ci/run installs it');
  process.stderr.write(
    'left out: pages in a browser, since there is no Chromium (Debian: apt install chromium; else set CHROMIUM to its path)\n',
  );
  return null;
}
