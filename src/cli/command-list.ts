import type { Command, Options } from './command.ts';

type Load = () => Promise<Command>;

/** A command of any options, as the list holds it. */
function loader<O extends Options>(load: () => Promise<{ readonly command: Command<O> }>): Load {
  // as: a command only ever sees the values that were read by its own options
  return async () => (await load()).command as unknown as Command;
}

/** Commands in the order of the job. The file of one is loaded when it is called, so that every call starts fast. */
export const COMMANDS: Readonly<Record<string, Load>> = {
  find: loader(() => import('./commands/find.ts')),
  receive: loader(() => import('./commands/receive.ts')),
  pick: loader(() => import('./commands/pick.ts')),
  count: loader(() => import('./commands/count.ts')),
  astray: loader(() => import('./commands/astray.ts')),
  found: loader(() => import('./commands/found.ts')),
  undo: loader(() => import('./commands/undo.ts')),
  bag: loader(() => import('./commands/bag.ts')),
  serve: loader(() => import('./commands/serve.ts')),
};
