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

/** What a fact is called in a sentence: `tolerance-high` → `tolerance`; most are called by their key. */
export function factName(key: string | number | undefined): string {
  return NAMES[String(key)] ?? String(key ?? '');
}
