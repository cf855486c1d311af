import type { Warning, WarningCode } from '#core/stock/warning.ts';
import { sayAgainst } from './because.ts';
import { count } from './count.ts';

const SENTENCES = {
  'promise-broken': (a) =>
    `Bag ${a['bag']} now has less than was promised of it (free: ${a['free']}); it is promised to ${a['builds']}.`,
  'on-count-list': (a) => `Bag ${a['bag']} is on the count list now: its record and the shelf disagree.`,
  'counted-already': (a) =>
    `Bag ${a['bag']} had been counted already: this is the same count of ${a['total']}, and it moves nothing. If you counted anew, look at the bag again, then count.`,
  'picked-again': (a) =>
    `Bag ${a['bag']} had been picked for ${a['build']} before (${a['picked']}); ${a['quantity']} more are booked now. If that is the same pick told twice, undo it.`,
  'safety-by-hand': (a) =>
    `CAUTION: row ${a['row']} is a part that protects people (${a['kind']}), and the rules do not say that bag ${a['bag']} may stand for it${sayAgainst(a)}. A wrong one can start a fire or give a shock. Be sure before anybody switches it on.`,
  'same-demand': (a) => `This holds for row ${String(a['rows']).replaceAll(', ', ', row ')} as well: the same demand.`,
  'choice-replaced': (a) => `Bag ${a['bag']}, which was chosen before, is no longer the choice.`,
  'short-lines': (a) =>
    `${count(a['made'], 'board')} made though ${count(a['lines'], 'line was', 'lines were')} short: what was soldered instead is in no record. If that is wrong, take it back.`,
  'cell-over': (a) =>
    `Cell ${a['cell']} of tray ${a['tray']} wants ${a['planned']} from bag ${a['bag']} and has ${a['picked']} now: ${a['over']} too many. If that is so, they come back with the leftovers; if it was a slip, take it back.`,
  estimate: (a) => `How many bag ${a['bag']} holds is an estimate: ${a['sure']} sure of ${a['onHand']}.`,
} satisfies Record<WarningCode, (args: Warning['args']) => string>;

/** The sentence of a warning: what was done is done, this should be known of it. */
export function warningText(warning: Warning): string {
  return SENTENCES[warning.code](warning.args);
}
