import { useState } from 'react';
import { readSum } from '#core/quantity/sum.ts';
import { saySum, saySumWrong } from '#say/en/ui.ts';
import { Field } from './field.tsx';

interface SumFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly help?: string;
  /** what the lab said of it */
  readonly wrong?: string | null;
  readonly autoFocus?: boolean;
}

/** Takes how many; piles may be added up as they are counted: `47+31+12`. The total stands below. */
export function SumField({ value, onChange, help, wrong, ...rest }: SumFieldProps) {
  const read = readSum(value);
  // a plus at the end waits for its pile; once Enter was pressed on it, it is said what is missing
  const [entered, setEntered] = useState<string | null>(null);
  const waits = /[+-]\s*$/.test(value) && entered !== value;
  const said = read.kind === 'wrong' && !waits ? saySumWrong(read.piece, read.why) : null;
  const below = read.kind === 'sum' && read.terms.length > 1 ? saySum(read.terms, read.total) : help;
  return (
    <Field
      {...rest}
      value={value}
      onChange={(event) => onChange(event.target.value)}
      onKeyDown={(event) => event.key === 'Enter' && setEntered(value)}
      inputMode="text"
      help={below}
      wrong={said ?? wrong ?? null}
    />
  );
}

/** The number that stands in a sum field, or null where there is none. */
export function sumOf(text: string): number | null {
  const read = readSum(text);
  return read.kind === 'sum' ? read.total : null;
}
