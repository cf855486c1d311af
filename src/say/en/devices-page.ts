import { counted } from './ui.ts';

/** What the page of devices, and the one by which a device joins, say. */
export const DEVICES_PAGE = {
  page: 'Devices',
  reading: 'Looking who may come in…',
  closed: 'Only this machine can see the lab.',
  closedWhy: 'To use a phone at the boxes, stop the lab and start it open to the network of the house:',
  command: 'npm start -- --lan',
  orCommand: 'bin/bagatelle.js serve --lan',
  closedThen: 'Then this page invites phones. Each gets a name of its own and can be forgotten at any time.',
  alone: 'The lab is open to the network; no other device knows it yet.',
  why: 'Each device acts under its own name. Nobody else on the network gets in.',
  invite: 'Invite a phone',
  anotherCode: 'Make another code',
  inviting: 'Point the camera of the phone at this.',
  inviteCode: 'Code to open on the phone',
  orType: 'Or type this address on the phone:',
  once: 'It works once.',
  plain: 'What the phone can’t do this way',
  plainWhy:
    'The lab speaks plain http on your own network. A phone then has no live camera for codes and can’t install the page: type the number of a bag instead. Whoever can read along on this network can read what is sent, and the pass of a device too. Use a network that you trust.',
  columns: { name: 'Device', paired: 'Came in', seen: 'Last seen', forget: 'Forget' },
  forget: 'Forget',
  you: 'this one',
  never: 'not yet',
  here: 'Invitations are made at the machine that serves the lab.',
  name: 'Name of this browser in the ledger',
  nameHelp: 'Stands as who did it. It is kept in this browser.',
  save: 'Keep the name',
  saved: 'Kept.',
  backup: 'Backup',
  backupWhy: 'The whole lab in one file, which an empty lab takes in again.',
  backupDo: 'Download a backup',
} as const;

export function sayDevices(devices: number): string {
  return `${counted(devices, 'device', 'devices')} may use the lab beside this machine.`;
}

export function sayUntil(time: string): string {
  return `${DEVICES_PAGE.once} The code ends at ${time}.`;
}

export const PAIR_PAGE = {
  title: 'Join the lab with this device',
  why: 'What you do here stands in the ledger under this name. The lab can forget the device at any time.',
  name: 'Name of this device',
  nameHelp: 'For example the place where it lies, or whose it is.',
  suggestions: ['Phone at the shelf', 'Bench tablet', 'Workshop laptop'],
  suggest: 'Or one of these',
  join: 'Join the lab',
  joining: 'Joining…',
  noCode: 'A code from the lab is missing.',
  noCodeWay: 'At the machine that serves the lab open More, Devices, and point the camera of this device at the code there.',
  code: 'Code from the lab',
  unknown: 'This device is not known to the lab yet.',
  unknownWay:
    'At the machine that serves the lab open More, Devices, invite a phone, and point the camera of this device at the code there.',
} as const;
