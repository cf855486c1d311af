import { setAsideCommand } from '../set-aside-command.ts';

export const command = setAsideCommand({
  name: 'astray',
  summary: 'Say that a bag was looked for and not found: plans leave it out.',
  state: 'astray',
});
