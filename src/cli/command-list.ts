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
  bag: loader(() => import('./commands/bag.ts')),
  boxes: loader(() => import('./commands/boxes.ts')),
  receive: loader(() => import('./commands/receive.ts')),
  import: loader(() => import('./commands/import.ts')),
  pick: loader(() => import('./commands/pick.ts')),
  return: loader(() => import('./commands/return.ts')),
  count: loader(() => import('./commands/count.ts')),
  astray: loader(() => import('./commands/astray.ts')),
  found: loader(() => import('./commands/found.ts')),
  undo: loader(() => import('./commands/undo.ts')),
  history: loader(() => import('./commands/history.ts')),
  save: loader(() => import('./commands/save.ts')),
  boards: loader(() => import('./commands/boards.ts')),
  choose: loader(() => import('./commands/choose.ts')),
  match: loader(() => import('./commands/match.ts')),
  kit: loader(() => import('./commands/kit.ts')),
  builds: loader(() => import('./commands/builds.ts')),
  finish: loader(() => import('./commands/finish.ts')),
  cancel: loader(() => import('./commands/cancel.ts')),
  read: loader(() => import('./commands/read.ts')),
  export: loader(() => import('./commands/export.ts')),
  check: loader(() => import('./commands/check.ts')),
  backup: loader(() => import('./commands/backup.ts')),
  restore: loader(() => import('./commands/restore.ts')),
  demo: loader(() => import('./commands/demo.ts')),
  serve: loader(() => import('./commands/serve.ts')),
};
