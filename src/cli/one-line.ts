import type { StockNow } from '#actions/follow-stock.ts';
import { matchRow } from '#actions/match-row.ts';
import type { Bom } from '#actions/plan-builds.ts';
import type { Because } from '#core/serve/verdict.ts';
import { sayBecause } from '#say/en/because.ts';
import { cliText } from '#say/en/cli.ts';
import { sayReasons } from '#say/en/reasons.ts';
import { ENDED, refused, type Ending } from './command.ts';
import { writeRefs } from './kit-tables.ts';
import type { Terminal } from './terminal.ts';

interface Wanted {
  readonly row: number;
  readonly boards: number;
  readonly json: boolean;
}

/** Shows one line of a BOM whole: what is asked, and every bag that may answer it with all reasons, the best first. */
export function tellLine(terminal: Terminal, now: StockNow, bom: Bom, { row, boards, json }: Wanted): Ending {
  const found = matchRow(now, bom, row, boards);
  if (!found) return refused({ code: 'not-valid', args: { field: '--row', received: row, expected: 'a row of the BOM' } });
  const { line, candidates } = found;
  const { refs, need, verdict, fitted, asked } = line;
  if (json) {
    const told = candidates.map((one) => ({ ...one, because: reasons(one.because) }));
    terminal.out(JSON.stringify({ row, refs, need, verdict, candidates: told, because: reasons(line.because) }));
    return ENDED;
  }
  const later = line.because.some(({ code }) => code === 'later');
  terminal.out(cliText('line-head', { row, refs: writeRefs(refs), text: asked.text, need, fitted, later }));
  for (const one of candidates) {
    terminal.out(cliText('line-bag', one));
    for (const said of sayReasons(one.because)) terminal.out(`    ${said}`);
  }
  if (candidates.length === 0) for (const said of sayReasons(line.because)) terminal.out(`  ${said}`);
  return ENDED;
}

function reasons(because: readonly Because[]): object[] {
  return because.map((one) => ({ code: one.code, text: sayBecause(one) }));
}
