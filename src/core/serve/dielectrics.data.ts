/**
 * Which ceramic dielectric may stand for which: the one that holds at least the temperature range and at most the change of
 * capacitance of the other (codes of EIA-198; the order is a definition computed from the codes, not a clause of the standard).
 * `X7R: 'X7S …'` reads "X7R serves for X7S, …"; each serves for itself.
 */
export const DIELECTRIC_SERVES: Readonly<Record<string, string>> = {
  C0G: 'X7R X7S X7T X7U X6S X6T X5R X5S Y5P Y5R Y5U Y5V Z5U Z5V',
  X8R: 'X8L X7R X7S X7T X7U X6S X6T X5R X5S Y5R Y5U Y5V Z5U Z5V',
  X8L: 'X7U Y5U Y5V Z5U Z5V',
  X7R: 'X7S X7T X7U X6S X6T X5R X5S Y5R Y5U Y5V Z5U Z5V',
  X7S: 'X7T X7U X6S X6T X5S Y5U Y5V Z5U Z5V',
  X7T: 'X7U X6T Y5U Y5V Z5U Z5V',
  X7U: 'Y5U Y5V Z5U Z5V',
  X6S: 'X6T X5S Y5U Y5V Z5U Z5V',
  X6T: 'Y5U Y5V Z5U Z5V',
  X5R: 'X5S Y5R Y5U Y5V Z5U Z5V',
  X5S: 'Y5U Y5V Z5U Z5V',
  Y5P: 'Y5R Y5U Y5V Z5U Z5V',
  Y5R: 'Y5U Y5V Z5U Z5V',
  Y5U: 'Y5V Z5U Z5V',
  Y5V: 'Z5V',
  Z5U: 'Z5V',
};

/** Dielectrics that lose most of their capacitance when warm or cold: never taken silently for a line that names none. */
export const POOR_DIELECTRICS: ReadonlySet<string> = new Set(['Y5V', 'Y5U', 'Z5U', 'Z5V', 'X7U']);
