import type { Context } from 'hono';
import type { Done } from '#actions/action.ts';
import { warned } from './warned.ts';
import { CHANGE_HEADER } from './served.ts';

/** What every act answers with: its id, its warnings in words, its change number, which goes into the header as well. */
export function doneOf(
  c: Context,
  { act, warnings, change }: Done,
): { id: string; warnings: ReturnType<typeof warned>[]; change: number } {
  c.header(CHANGE_HEADER, String(change));
  return { id: act, warnings: warnings.map(warned), change };
}
