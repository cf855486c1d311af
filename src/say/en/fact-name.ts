const NAMES: Readonly<Record<string, string>> = {
  'tolerance-low': 'tolerance',
  'tolerance-high': 'tolerance',
  partNumber: 'part number',
  'voltage-kind': 'kind of voltage',
  'load-capacitance': 'load capacitance',
  'temperature-coefficient': 'temperature coefficient',
  polarised: 'polarity',
  'temperature-low': 'lowest temperature',
  'temperature-high': 'highest temperature',
  safety: 'safety class',
  pins: 'number of pins',
  variant: 'description',
};

/** What the marking of a fuse says of its speed (IEC 60127): no class of capacitors is written so. */
const SPEED = /^(?:FF|F|M|T|TT)$/;

/**
 * What a fact is called in a sentence: `tolerance-high` → `tolerance`; most are called by their key. What is said of it tells the
 * speed of a fuse from a safety class: `safety`, T → `speed`.
 */
export function factName(key: string | number | undefined, ...said: readonly (string | number | undefined)[]): string {
  if (key === 'safety' && said.some((word) => SPEED.test(String(word ?? '')))) return 'speed';
  return NAMES[String(key)] ?? String(key ?? '');
}
