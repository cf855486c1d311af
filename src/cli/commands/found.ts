import { setAsideCommand } from '../set-aside-command.ts';

export const command = setAsideCommand({
  name: 'found',
  summary: 'Say that a bag that was astray turned up again.',
  state: 'sound',
});
