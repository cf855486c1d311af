/** What happened on a day that is worth telling: a pick by hand, something put right, a bag that went astray. */
export type TellingEvent = { readonly name: string; readonly day: string; readonly who: string; readonly note?: string } & (
  | { readonly did: 'pick'; readonly bag: number; readonly quantity: number }
  /** more than the record says, since the hand holds them */
  | { readonly did: 'pick-in-hand'; readonly bag: number; readonly more: number }
  | { readonly did: 'return'; readonly bag: number; readonly quantity: number }
  /** counted: so many more or fewer than the record says */
  | { readonly did: 'count'; readonly bag: number; readonly off: number }
  | { readonly did: 'set-aside'; readonly bag: number; readonly state: 'astray' | 'sound' }
  | { readonly did: 'undo'; readonly of: string }
);

const [MAREN, TOBIAS, INES] = ['Maren Oduya', 'Tobias Quell', 'Ines Farrow'];

export const EVENTS: readonly TellingEvent[] = [
  { name: 'blue-1', day: '2025-01-15', who: TOBIAS, did: 'pick', bag: 138, quantity: 5, note: 'lamps of the test jig' },
  { name: 'blue-2', day: '2025-08-21', who: INES, did: 'pick', bag: 138, quantity: 4 },
  { name: 'blue-3', day: '2026-02-17', who: TOBIAS, did: 'pick', bag: 138, quantity: 3, note: 'the last ones' },
  { name: 'memory-1', day: '2025-04-11', who: MAREN, did: 'pick', bag: 172, quantity: 3, note: 'trial of the logger memory' },
  { name: 'memory-2', day: '2025-10-30', who: MAREN, did: 'pick', bag: 172, quantity: 2 },
  { name: 'wrong-bag', day: '2025-05-06', who: INES, did: 'pick', bag: 21, quantity: 12, note: 'for the sensor test' },
  { name: 'wrong-bag-back', day: '2025-05-06', who: INES, did: 'undo', of: 'wrong-bag', note: 'that was bag 22' },
  { name: 'right-bag', day: '2025-05-06', who: INES, did: 'pick', bag: 22, quantity: 12, note: 'for the sensor test' },
  { name: 'typed-twice', day: '2025-11-12', who: TOBIAS, did: 'pick', bag: 121, quantity: 8 },
  { name: 'typed-twice-again', day: '2025-11-12', who: TOBIAS, did: 'pick', bag: 121, quantity: 8 },
  { name: 'typed-twice-back', day: '2025-11-13', who: TOBIAS, did: 'undo', of: 'typed-twice-again', note: 'booked twice' },
  { name: 'hand-is-right', day: '2025-12-04', who: TOBIAS, did: 'pick-in-hand', bag: 175, more: 1, note: 'the bag held one more than it said' },
  { name: 'hand-counted', day: '2025-12-05', who: TOBIAS, did: 'count', bag: 175, off: 0 },
  { name: 'gates-in-hand', day: '2026-11-16', who: INES, did: 'pick-in-hand', bag: 167, more: 1, note: 'eleven in the bag, ten by the record' },
  { name: 'shunt-lost', day: '2026-03-27', who: INES, did: 'count', bag: 57, off: -1 },
  { name: 'reference-astray', day: '2026-07-02', who: MAREN, did: 'set-aside', bag: 161, state: 'astray', note: 'not in the box, not on the bench' },
  { name: 'amplifier-astray', day: '2025-08-05', who: MAREN, did: 'set-aside', bag: 162, state: 'astray' },
  { name: 'amplifier-found', day: '2025-08-19', who: TOBIAS, did: 'set-aside', bag: 162, state: 'sound', note: 'behind the box' },
  { name: 'count-undone', day: '2026-05-18', who: INES, did: 'count', bag: 220, off: -9, note: 'counted the wrong bag' },
  { name: 'count-undone-back', day: '2026-05-18', who: INES, did: 'undo', of: 'count-undone' },
  { name: 'cells', day: '2026-06-30', who: MAREN, did: 'pick', bag: 216, quantity: 6, note: 'new clock cells for the loggers at the pier' },
  { name: 'reel-used', day: '2026-02-02', who: TOBIAS, did: 'pick', bag: 78, quantity: 200, note: 'a strip for the workshop day' },
  { name: 'shrink', day: '2026-04-20', who: TOBIAS, did: 'pick', bag: 269, quantity: 1500, note: 'about a metre and a half' },
  { name: 'solder', day: '2025-10-01', who: TOBIAS, did: 'pick', bag: 271, quantity: 60_000, note: 'a small coil for the class' },
];
