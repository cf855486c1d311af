import type { Command } from './command.ts';

type Load = () => Promise<{ readonly command: Command }>;

/** Commands in the order of the job. The file of one is loaded when it is called, so that every call starts fast. */
export const COMMANDS: Readonly<Record<string, Load>> = {
  find: () => import('./commands/find.ts'),
  marking: () => import('./commands/marking.ts'),
  bag: () => import('./commands/bag.ts'),
  boxes: () => import('./commands/boxes.ts'),
  codes: () => import('./commands/codes.ts'),
  receive: () => import('./commands/receive.ts'),
  import: () => import('./commands/import.ts'),
  pick: () => import('./commands/pick.ts'),
  return: () => import('./commands/return.ts'),
  count: () => import('./commands/count.ts'),
  astray: () => import('./commands/astray.ts'),
  found: () => import('./commands/found.ts'),
  undo: () => import('./commands/undo.ts'),
  history: () => import('./commands/history.ts'),
  save: () => import('./commands/save.ts'),
  boards: () => import('./commands/boards.ts'),
  choose: () => import('./commands/choose.ts'),
  match: () => import('./commands/match.ts'),
  kit: () => import('./commands/kit.ts'),
  builds: () => import('./commands/builds.ts'),
  finish: () => import('./commands/finish.ts'),
  cancel: () => import('./commands/cancel.ts'),
  read: () => import('./commands/read.ts'),
  value: () => import('./commands/value.ts'),
  export: () => import('./commands/export.ts'),
  check: () => import('./commands/check.ts'),
  backup: () => import('./commands/backup.ts'),
  restore: () => import('./commands/restore.ts'),
  demo: () => import('./commands/demo.ts'),
  serve: () => import('./commands/serve.ts'),
};
