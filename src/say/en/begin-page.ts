/** What the first page says: how a lab begins. */
import { counted } from './ui.ts';

export const BEGIN = {
  title: 'How shall the lab begin?',
  lead: 'You can change your mind: the demo lab can be cleared, and a list that was taken in can be taken back.',
  demo: 'With a demo lab',
  demoWhy:
    'The workshop of a seaside school: some 260 bags in five boxes, three boards, and two years of deliveries, builds and counts. Try a kit, a pick and a delivery; nothing leaves this machine.',
  demoDo: 'Open the demo lab',
  demoBusy: 'Filling the demo lab…',
  demoBusyWhy:
    'Two years of deliveries, builds and counts are booked one by one. It takes some seconds, then the lab opens by itself.',
  list: 'With my list',
  listWhy:
    'One part a line, in any order of columns, as CSV, TSV, text or a Markdown table. Each column is read back to you before anything is kept.',
  listZone: 'My list',
  listBusy: (name: string) => `Reading “${name}”…`,
  listBusyWhy: 'Nothing is kept before you say so.',
  drop: 'Drop the file here, or',
  choose: 'Choose a list',
  walk: 'Walk a box',
  walkWhy:
    'No list needed. Take a box, open its bags one by one, and type what they say: 4k7 1% 0805. Each gets the next number.',
  walkDo: 'Start with box A',
  backup: 'From a backup',
  backupWhy: 'A whole lab as it was, with all that was ever done in it.',
  backupZone: 'A backup',
  backupChoose: 'Choose a backup',
  backupBusy: (name: string) => `Bringing back the lab of “${name}”…`,
  backupBusyWhy: 'It is checked whole before anything is kept.',
  empty: 'Empty',
  emptyWhy:
    'The first bag gets number 1. When a bag is at hand, Receive takes it in. Have zip bags of 10 × 15 cm, a box and something to write with ready.',
  emptyDo: 'Start empty',
  notEmptyWhy: 'It has begun already. Another list adds bags to it.',
  demoStands: 'This is the demo lab. Clear it when you want to begin with your own.',
  find: 'Find a part',
  receive: 'Receive bags',
  boards: 'Boards',
  another: 'Bring another list',
  anotherWhy: 'Its bags are added to those that are here. Each column is read back to you before anything is kept.',
  clear: 'Clear the demo lab',
  clearWhy: 'A backup of it is made first, so that all of it can be brought back. Then the lab is empty.',
  clearBusy: 'Clearing the demo lab…',
  cleared: 'The demo lab is cleared.',
  clearedKept: (backup: string) => `All of it is kept in the backup ${backup}.`,
  fileWrong: (name: string) =>
    `“${name}” can’t be read here. Save the table as CSV or TSV, or bring a backup, whose name ends in .jsonl.`,
} as const;

/** What is in a lab that has begun: `239 bags in 5 boxes, and 3 boards.` */
export function sayHolds({
  bags,
  boxes,
  boards,
}: {
  readonly bags: number;
  readonly boxes: number;
  readonly boards: number;
}): string {
  const held = `${counted(bags, 'bag', 'bags')} in ${counted(boxes, 'box', 'boxes')}`;
  return `This lab holds ${held}${boards ? `, and ${counted(boards, 'board', 'boards')}` : ''}.`;
}
