import type { ReadRow } from '#core/bom/bom.ts';
import { byHand, type ByHand } from '#core/bom/override.ts';
import { demandKey } from '#core/part/demand-key.ts';
import { guardsPeople } from '#core/serve/safety.ts';
import { done, refuse } from '#core/stock/refusal.ts';
import { bagsById } from '#db/bags.ts';
import { findChoice, readBoard, writeChoice, type ChoiceMemo } from '#db/boards.ts';
import type { Tx } from '#db/database.ts';
import { readBag } from '#db/read-stock.ts';
import { action, type Action, type Warning } from './action.ts';
import { begin } from './begin.ts';
import type { ChooseInput, ChooseResult } from './inputs.ts';

/**
 * Takes a bag for a demand of a board, and accepts what is to be checked about it; it holds for later revisions too, and for every
 * line with that demand. A bag of which a stated fact is below or different is taken only with a reason, which is kept and shown.
 */
export const choose: Action<ChooseInput, ChooseResult> = action('choose', async (tx, clock, who, input) => {
  const found = await readBoard(tx, input.board);
  if (!found) return refuse('no-such-board', { board: input.board });
  const { board, lines } = found;
  const bag = input.bag === null ? null : await readBag(tx, input.bag);
  if (input.bag !== null && !bag) return refuse('no-such-bag', { bag: input.bag });
  const alike = lines.filter(({ part }) => demandKey(part) === input.demand);
  const line = alike.find(({ row }) => row === input.row) ?? alike[0];
  const answer = line && bag ? byHand(line, bag) : null;
  const reason = input.reason?.trim() ?? '';
  if (line && bag && answer?.verdict === 'missing' && reason === '')
    return refuse('override', overrideOf(line, bag.number, answer));
  const before = await findChoice(tx, board.id, input.demand);
  const after = bag ? { bag: bag.id, accept: input.accept } : null;
  if (before?.bag === after?.bag && before?.accept === after?.accept && reason === '') return refuse('nothing-to-do');

  const memo: ChoiceMemo = { board: board.id, demand: input.demand, before, after, ...(reason !== '' && { reason }) };
  const begun = await begin(tx, clock, who, noted(input, reason), { kind: 'chosen', memo });
  if (!begun.ok) return begun;
  await writeChoice(tx, board.id, input.demand, after);
  const warnings: Warning[] = [];
  if (line && bag && answer && guardsPeople(line.part) && answer.verdict !== 'exact')
    warnings.push({ code: 'safety-by-hand', args: { kind: line.part.kind, ...overrideOf(line, bag.number, answer) } });
  const others = alike.filter((one) => one !== line).map(({ row }) => row);
  if (others.length > 0) warnings.push({ code: 'same-demand', args: { row: line?.row ?? 0, rows: others.join(', ') } });
  if (before && before.bag !== after?.bag)
    warnings.push({ code: 'choice-replaced', args: { bag: await numberOf(tx, before.bag) } });
  const { demand, accept } = input;
  return done({ act: input.id, repeat: false, change: begun.value, warnings, board: board.name, demand, bag: input.bag, accept });
});

/** The reason is the note of the act, beside what else was noted. */
function noted(input: ChooseInput, reason: string): ChooseInput {
  return reason === '' ? input : { ...input, note: input.note === undefined ? reason : `${reason}; ${input.note}` };
}

/** Arguments of the sentence that says why a bag is no answer to a line. */
function overrideOf(line: ReadRow, bag: number, { against }: ByHand): Record<string, string | number> {
  return { bag, row: line.row, ...(against && { ...against.args, why: against.code }) };
}

async function numberOf(tx: Tx, bag: string): Promise<number> {
  return (await bagsById(tx, [bag])).get(bag)?.number ?? 0;
}
