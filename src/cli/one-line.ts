import type { StockNow } from '#actions/follow-stock.ts';
import type { Bom } from '#actions/plan-builds.ts';
import { matchBom, type Match, type MatchedLine } from '#core/bom/match.ts';
import { free } from '#core/stock/stock.ts';
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
  const line = matchBom(
    bom.rows.filter((one) => one.row === row),
    index,
    bom.choices,
    boards,
  )[0];
  if (!line) return refused({ code: 'not-valid', args: { field: '--row', received: row, expected: 'a row of the BOM' } });
  if (json) {
    terminal.out(JSON.stringify(jsonOf(line)));
    return ENDED;
  }
  const bags = new Map(stock().bags.map((bag) => [bag.number, bag]));
  terminal.out(
    cliText('line-head', { row, refs: writeRefs(line.refs), text: line.asked.text, need: line.need, fitted: line.fitted }),
  );
  for (const { bag: number, verdict, because } of line.candidates) {
    const bag = bags.get(number);
    terminal.out(cliText('line-bag', { bag: number, verdict, code: bag?.code ?? '', free: bag ? free(bag) : 0 }));
    for (const said of sayReasons(because)) terminal.out(`    ${said}`);
  }
  if (line.candidates.length === 0) for (const said of sayReasons(line.because)) terminal.out(`  ${said}`);
  return ENDED;
}

function jsonOf({ row, refs, need, verdict, candidates, because }: MatchedLine): object {
  const told = ({ because: reasons }: Pick<Match, 'because'>): object[] =>
    reasons.map((one) => ({ code: one.code, text: sayBecause(one) }));
  const bags = candidates.map((one) => ({ bag: one.bag, verdict: one.verdict, because: told(one) }));
  return { row, refs, need, verdict, candidates: bags, because: told({ because }) };
}
