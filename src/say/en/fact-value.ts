const VALUES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  polarised: { yes: 'polarised', no: 'not polarised' },
  'voltage-kind': { ac: 'AC', dc: 'DC', mains: 'AC mains', 'ac-mains': 'AC mains' },
};

/** A fact's value as a person reads it: `polarised`, `yes` → `polarised`; nothing, or `none`, is `not stated`. */
export function factValue(fact: string | number | undefined, value: string | number | undefined): string {
  if (value === undefined || value === '' || value === 'none') return 'not stated';
  // a number and its unit stand together, as in the name of a part
  return VALUES[String(fact)]?.[String(value)] ?? String(value).replace(/(?<=^[\d.]+) (?=\S)/, '\u202f');
}
