import { plainDigits } from '#core/quantity/write-quantity.ts';
import type { Decimal } from '#core/quantity/decimal.ts';

/** What the answer to 'what is this value' says beside its table. */
export const VALUE = {
  none: (text: string) => `'${text}' is no value alone. Write one, such as 4k7, 0.1 µF or 10 mH.`,
  read: (text: string, written: string, code: string) => `'${text}' is ${written}; in codes ${code}.`,
  series: (series: readonly string[]) => `A standard value of ${series.join(', ')}.`,
  noSeries: 'A standard value of no series.',
  link: 'No series has it: it is a link.',
  otherUnit: 'Standard series are for ohms, farads, henries and zener volts.',
  markedOn: (look: 'chip' | 'capacitor' | 'coil', marks: readonly string[]) => `${MARKED_ON[look]} ${marks.join(', ')}.`,
  /** a mark that only parts of this tolerance have */
  onePercent: (mark: string) => `${mark} (±1 %)`,
  exact: 'exact',
} as const;

const MARKED_ON = {
  chip: 'Printed on a chip resistor:',
  capacitor: 'Printed on a capacitor:',
  coil: 'Printed on an inductor:',
} as const;

/** A deviation in percent with its sign, two places: −12e-3 → `−1.20 %`; what would round to nothing is said to be less. */
export function deviationText(deviation: Decimal): string {
  const percent = Number(plainDigits(deviation, 2));
  if (percent === 0) return VALUE.exact;
  const sign = percent < 0 ? '−' : '+';
  const size = Math.abs(percent);
  return size < 0.01 ? `${sign}< 0.01 %` : `${sign}${size.toFixed(2)} %`;
}
