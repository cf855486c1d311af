import { spawn } from 'node:child_process';
import { platform } from 'node:os';

const OPENERS: Readonly<Partial<Record<NodeJS.Platform, string>>> = { darwin: 'open', win32: 'explorer' };

/** Asks the desktop to show a page; where there is none, the printed address has to do. */
export function openPage(url: string): void {
  const opener = OPENERS[platform()] ?? 'xdg-open';
  if (opener === 'xdg-open' && !process.env['DISPLAY'] && !process.env['WAYLAND_DISPLAY']) return;
  const child = spawn(opener, [url], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}
