import { randomUUID } from 'node:crypto';
import { basename } from 'node:path';
import { perform } from '#actions/perform.ts';
import { saveBoard } from '#actions/save-board.ts';
import type { Outcome } from '#core/stock/refusal.ts';
import { readBoard } from '#db/boards.ts';
import type { Lab } from '#db/database.ts';
import { cliText } from '#say/en/cli.ts';
import type { NamedBom } from './bom-words.ts';
import { clock, who } from './lab.ts';
import type { Terminal } from './terminal.ts';

interface KeptBoard {
  readonly board: string;
  readonly revision: string;
}

/** The board of a BOM, since a build is kept of a board only: a file is saved first, unless its board has just these lines. */
export async function keepBoard(lab: Lab, terminal: Terminal, bom: NamedBom, source: string): Promise<Outcome<KeptBoard>> {
  if (bom.board !== undefined && bom.revision !== undefined)
    return { ok: true, value: { board: bom.board, revision: bom.revision } };
  const known = await lab.read((tx) => readBoard(tx, bom.name));
  if (known && JSON.stringify(known.lines) === JSON.stringify(bom.rows))
    return { ok: true, value: { board: bom.name, revision: known.revision.name } };
  const input = { id: randomUUID(), board: bom.name, source: basename(source), lines: bom.rows };
  const saved = await perform(lab, saveBoard, clock, who(), input);
  if (saved.ok) terminal.say(cliText('board-saved', saved.value));
  return saved;
}
