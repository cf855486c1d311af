/** The keys of every page, as its page of keys lists them. */
export const KEYS_PAGE = {
  title: 'Every page works by keys.',
  why: 'Single letters act only outside of fields. Tab and Enter reach everything too.',
  switch: 'Single keys',
  on: 'act',
  off: 'are switched off',
  switchHelp: 'Switch them off where speech or another program types for you.',
} as const;

interface KeyGroup {
  readonly name: string;
  readonly keys: readonly { readonly press: readonly string[]; readonly does: string }[];
}

const key = (does: string, ...press: readonly string[]): KeyGroup['keys'][number] => ({ press, does });

export const KEY_GROUPS: readonly KeyGroup[] = [
  {
    name: 'Everywhere',
    keys: [
      key('find', '/'),
      key('go to Find', 'G', 'F'),
      key('go to Receive', 'G', 'R'),
      key('go to Boards', 'G', 'B'),
      key('go to Kits', 'G', 'K'),
      key('go to Boxes', 'G', 'X'),
      key('this page', '?'),
      key('row above, row below', 'Up', 'Down'),
      key('open the row', 'Enter'),
      key('close, or clear the field', 'Esc'),
      key('go to the bag of that number in a list', '1…9'),
    ],
  },
  {
    name: 'A bag',
    keys: [key('pick', 'P'), key('take back into the bag', 'T'), key('count', 'C'), key('undo the latest movement', 'U')],
  },
  {
    name: 'A board',
    keys: [
      key('accept the check', 'A'),
      key('take another bag', 'O'),
      key('fit the line later, or fit it again', 'F'),
      key('plan the kit', 'K'),
    ],
  },
  {
    name: 'A kit',
    keys: [key('the pieces are in their cell', 'Space'), key('fewer or more were in the bag', '−'), key('skip for now', 'S')],
  },
  {
    name: 'A file as it is read',
    keys: [
      key('next doubt', 'Enter'),
      key('say what it is', 'E'),
      key('leave the line out', 'Del'),
      key('keep it', 'Ctrl+Enter'),
    ],
  },
  { name: 'Leftovers', keys: [key('take them back', 'Ctrl+Enter')] },
  { name: 'Receive', keys: [key('book the bag and go on', 'Enter')] },
];
