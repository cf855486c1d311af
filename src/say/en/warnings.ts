import type { Warning, WarningCode } from '#core/stock/warning.ts';

const SENTENCES = {
  'promise-broken': (a) =>
    `Bag ${a['bag']} now has less than was promised of it (free: ${a['free']}); it is promised to ${a['builds']}.`,
  'on-count-list': (a) => `Bag ${a['bag']} is on the count list now: its record and the shelf disagree.`,
  'picked-again': (a) =>
    `Bag ${a['bag']} had been picked for ${a['build']} before (${a['picked']}); ${a['quantity']} more are booked now. If that is the same pick told twice, undo it.`,
  estimate: (a) => `How many bag ${a['bag']} holds is an estimate: ${a['sure']} sure of ${a['onHand']}.`,
} satisfies Record<WarningCode, (args: Warning['args']) => string>;

/** The sentence of a warning: what was done is done, this should be known of it. */
export function warningText(warning: Warning): string {
  return SENTENCES[warning.code](warning.args);
}
