import { existsSync } from 'node:fs';
import { chromium, type Browser, type BrowserContextOptions } from '@playwright/test';

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

export const DESK = { viewport: { width: 1440, height: 900 } };
export const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
/** What a page is opened with, by the words of a test's name. */
export const KINDS: Readonly<Record<string, BrowserContextOptions>> = {
  desk: DESK,
  'desk, dark': { ...DESK, colorScheme: 'dark' },
  hand: PHONE,
  'hand, dark': { ...PHONE, colorScheme: 'dark' },
};
