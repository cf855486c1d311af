import type { ReactNode } from 'react';
import { useId } from 'react';

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly options: readonly { readonly value: T; readonly says: ReactNode }[];
  readonly value: T | null;
  readonly onChange: (value: T) => void;
  /** one line below */
  readonly help?: string;
}

/** Two to four answers side by side; native radios, so that arrows walk them. */
export function Choice<T extends string>({ legend, options, value, onChange, help }: ChoiceProps<T>) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend>{legend}</legend>
      {options.map((option) => (
        <label key={option.value}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={value === option.value}
            onChange={() => onChange(option.value)}
          />
          {option.says}
        </label>
      ))}
      {help && <small>{help}</small>}
    </fieldset>
  );
}
