export type WarningCode =
  | 'promise-broken' // {bag, free, reserved, builds}: less is left than was promised of it
  | 'on-count-list' // {bag}: its record was shown to be wrong
  | 'picked-again' // {bag, build, quantity, picked}: the stop was done before
  | 'estimate'; // {bag, sure, onHand}

/** What a person should know of an act that was done. */
export interface Warning {
  readonly code: WarningCode;
  readonly args: Readonly<Record<string, string | number>>;
}
