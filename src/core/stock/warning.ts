export type WarningCode =
  | 'promise-broken' // {bag, free, reserved, builds}: less is left than was promised of it
  | 'on-count-list' // {bag}: its record was shown to be wrong
  | 'counted-already' // {bag, total}: the same count told again
  | 'picked-again' // {bag, build, quantity, picked}: the stop was done before
  | 'safety-by-hand' // {kind, bag, row, why, …}: a part that protects people, chosen by hand
  | 'same-demand' // {row, rows}: the choice holds for these rows as well
  | 'choice-replaced' // {bag}: what had been chosen before
  | 'short-lines' // {made, lines}: boards made though lines were short
  | 'cell-over' // {tray, cell, bag, planned, picked, over}: more was taken than the cell wants
  | 'estimate'; // {bag, sure, onHand}

/** What a person should know of an act that was done. */
export interface Warning {
  readonly code: WarningCode;
  readonly args: Readonly<Record<string, string | number>>;
}
