import { randomUUID } from 'node:crypto';
import type { Action, Done } from '#actions/action.ts';
import type { ActInput } from '#actions/inputs.ts';
import { perform } from '#actions/perform.ts';
import { JSON_OPTION, refused, ENDED, type Ending } from './command.ts';
import { clock, who, withLab } from './lab.ts';
import type { Terminal } from './terminal.ts';
import { cliText } from '#say/en/cli.ts';
import { warningText } from '#say/en/warnings.ts';
import type { Lab } from '#db/database.ts';

/** What every writing command takes. */
export const WRITE_OPTIONS = {
  note: { type: 'word', value: 'TEXT', say: 'kept with the act' },
  id: { type: 'word', value: 'UUID', say: 'id of the act: the same id again is counted once' },
  json: JSON_OPTION,
} as const;

export interface WriteOptions {
  readonly note?: string;
  readonly id?: string;
  readonly json?: true;
}

/** An act of one verb: what it is given, and the lines that tell a person what became of it. */
export interface Deed<Input, Result> {
  readonly action: Action<Input, Result>;
  readonly input: (told: ActInput) => NoInfer<Input>;
  readonly tell: (result: Result) => readonly string[];
  /** what machines get, where it is more than the result */
  readonly json?: (result: Result) => object;
}

/** Performs one act in the lab of the surroundings, and tells it. */
export function writeAct<Input extends ActInput, Result extends Done>(
  terminal: Terminal,
  options: WriteOptions,
  deed: Deed<Input, Result>,
): Promise<Ending> {
  return withLab((lab) => writeActIn(lab, terminal, options, deed));
}

/** The same in a lab that is open already. */
export async function writeActIn<Input extends ActInput, Result extends Done>(
  lab: Lab,
  terminal: Terminal,
  options: WriteOptions,
  deed: Deed<Input, Result>,
): Promise<Ending> {
  const told: ActInput = { id: options.id ?? randomUUID(), ...(options.note !== undefined && { note: options.note }) };
  const outcome = await perform(lab, deed.action, clock, who(), deed.input(told));
  if (!outcome.ok) return refused(outcome.refusal);
  tellDone(terminal, options, outcome.value, deed);
  return ENDED;
}

function tellDone<Result extends Done>(
  terminal: Terminal,
  options: WriteOptions,
  result: Result,
  { tell, json = (same) => same }: Pick<Deed<never, Result>, 'tell' | 'json'>,
): void {
  if (options.json) terminal.out(JSON.stringify(json(result)));
  else for (const line of tell(result)) terminal.out(line);
  for (const warning of result.warnings) terminal.say(warningText(warning));
  if (result.repeat) terminal.say(cliText('did-repeat'));
  else if (!options.json && !('undoes' in result)) terminal.say(cliText('act', { act: result.act.slice(0, 8) }));
}
