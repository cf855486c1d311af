import { readColumnChoice } from '#actions/column-choice.ts';
import type { ColumnRole } from '#core/bom/columns.ts';
import { cliText } from '#say/en/cli.ts';
import { wrongUsage, type Ending } from './command.ts';

export const COLUMNS_OPTION = {
  type: 'word',
  value: 'COLUMNS',
  say: 'what columns mean where the guess is wrong: "2=value,3=footprint", by number or by header',
} as const;

type Choice =
  | { readonly ok: true; readonly value?: ReadonlyMap<string, ColumnRole> }
  | { readonly ok: false; readonly ending: Ending };

/** The word of `--columns`: `2=value, Pos=refs`; wrong usage where a role is not known. */
export function columnChoice(word: string | undefined): Choice {
  if (word === undefined) return { ok: true };
  const { choice, roles } = readColumnChoice(word);
  return choice
    ? { ok: true, value: choice }
    : { ok: false, ending: wrongUsage(cliText('columns-unreadable', { word, roles: roles.join(', ') })) };
}
