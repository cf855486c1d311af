import { randomUUID } from 'node:crypto';
import { followStock } from '#actions/follow-stock.ts';
import type { ActInput, ReserveKitResult } from '#actions/inputs.ts';
import { perform } from '#actions/perform.ts';
import { planBuild, wishTrouble } from '#actions/plan-build.ts';
import { planOpen, type Wish } from '#actions/plan-open.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { reservePlanned } from '#actions/reserve-planned.ts';
import type { ColumnRole } from '#core/bom/columns.ts';
import type { Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { cliText } from '#say/en/cli.ts';
import { warningText } from '#say/en/warnings.ts';
import { namedBom, type NamedBom } from './bom-words.ts';
import { keepBoard } from './keep-board.ts';
import type { Shown } from './kit-answers.ts';
import { clock, who } from './lab.ts';
import { tellDoubtedRows } from './reading-words.ts';
import type { Terminal } from './terminal.ts';
import { BOARDS, readWhole } from '#actions/whole.ts';
import type { WriteOptions } from './write-act.ts';

interface KitOptions extends WriteOptions {
  readonly boards?: string;
  readonly priority?: string;
  readonly due?: string;
  readonly name?: string;
  readonly 'no-spares'?: true;
  readonly anyway?: true;
}

/** What a call of `kit` works with. */
export interface KitCall {
  readonly lab: Lab;
  readonly terminal: Terminal;
  readonly options: KitOptions;
  /** what a person says that the columns of a file mean */
  readonly told?: ReadonlyMap<string, ColumnRole>;
}

const PRIORITIES = { least: 0, most: 999 };

type Wanted = Pick<Wish, 'boards' | 'priority' | 'due'>;

/** How many boards, how urgently, until when. */
export function readWanted({ boards = '1', priority, due }: KitOptions): Outcome<Wanted> {
  const many = readWhole(boards, '--boards', BOARDS);
  if (!many.ok) return many;
  const rank = priority === undefined ? null : readWhole(priority, '--priority', PRIORITIES);
  if (rank && !rank.ok) return rank;
  const wanted = { boards: many.value, ...(rank && { priority: rank.value }), ...(due !== undefined && { due }) };
  const trouble = wishTrouble(wanted);
  return trouble ? { ok: false, refusal: trouble } : { ok: true, value: wanted };
}

/** The BOM of a word, after what is doubtful in it was said. */
async function bomOf({ lab, terminal, told }: KitCall, word: string): Promise<Outcome<NamedBom>> {
  const bom = await namedBom(lab, word, undefined, told);
  if (bom.ok) tellDoubtedRows(terminal, bom.value.rows);
  return bom;
}

/** Plans BOMs beside all planned builds; nothing is written. Without a BOM it is the plan of those. */
export async function planWords(call: KitCall, words: readonly string[], wanted: Wanted): Promise<Outcome<Shown>> {
  const { lab, options } = call;
  const wishes: Wish[] = [];
  for (const word of words) {
    const bom = await bomOf(call, word);
    if (!bom.ok) return bom;
    wishes.push({ ...bom.value, ...wanted, name: options.name ?? bom.value.name });
  }
  const { all, asked } = await planOpen(lab, followStock(lab), wishes, sparesOf(options));
  return { ok: true, value: { shown: words.length ? asked : all, all } };
}

/** A planned build of the plan of all; nothing is written. */
export async function planKept({ lab, options }: KitCall, build: string): Promise<Outcome<Shown>> {
  const { all } = await planOpen(lab, followStock(lab), [], sparesOf(options));
  return { ok: true, value: { shown: all.filter(({ open }) => open.key === build), all } };
}

/** Keeps a build of a BOM as planned. */
export async function keepWord(call: KitCall, word: string, wanted: Wanted): Promise<Outcome<Shown>> {
  const { lab, terminal, options } = call;
  const bom = await bomOf(call, word);
  if (!bom.ok) return bom;
  const board = await keepBoard(lab, terminal, bom.value, word);
  if (!board.ok) return board;
  const named = {
    board: board.value.board,
    revision: board.value.revision,
    ...(options.name !== undefined && { name: options.name }),
  };
  const outcome = await perform(lab, planBuild, clock, who(), { ...told(options), ...named, ...wanted });
  if (!outcome.ok) return outcome;
  const { name, build, act, repeat } = outcome.value;
  terminal.say(
    repeat ? cliText('did-repeat') : cliText('kept-planned', { name, build: build.slice(0, 8), act: act.slice(0, 8) }),
  );
  return planKept(call, build);
}

/** Promises a BOM what it gets. */
export async function reserveWord(call: KitCall, word: string, wanted: Wanted): Promise<Outcome<Shown>> {
  const { lab, terminal, options } = call;
  const bom = await bomOf(call, word);
  const of = bom.ok && bom.value.board === undefined ? { rows: bom.value.rows } : { board: word };
  const name = options.name === undefined ? {} : { name: options.name };
  const input = { ...told(options), ...sparesOf(options), ...anyway(options), ...wanted, of, ...name };
  const outcome = await reserveBom(lab, followStock(lab), clock, who(), input, () => Promise.resolve(bom));
  if (!outcome.ok) return outcome;
  const { planned, all, result } = outcome.value;
  tellReserved(terminal, result);
  return { ok: true, value: { shown: [planned], all } };
}

/** Promises a planned build what it gets. */
export async function reserveKept({ lab, terminal, options }: KitCall, build: string): Promise<Outcome<Shown>> {
  const outcome = await reservePlanned(lab, followStock(lab), clock, who(), {
    ...told(options),
    ...sparesOf(options),
    ...anyway(options),
    build,
  });
  if (!outcome.ok) return outcome;
  const { planned, all, result } = outcome.value;
  tellReserved(terminal, result);
  return { ok: true, value: { shown: [planned], all } };
}

function told({ id, note }: KitOptions): ActInput {
  return { id: id ?? randomUUID(), ...(note !== undefined && { note }) };
}

function sparesOf(options: KitOptions): { readonly spares: boolean } {
  return { spares: !options['no-spares'] };
}

function anyway(options: KitOptions): { readonly anyway?: true } {
  return options.anyway ? { anyway: true } : {};
}

function tellReserved(terminal: Terminal, result: ReserveKitResult): void {
  for (const { name, build } of result.builds)
    terminal.say(cliText('reserved', { name, build: build.slice(0, 8), act: result.act.slice(0, 8) }));
  for (const warning of result.warnings) terminal.say(warningText(warning));
}
