import { useId } from 'react';

interface SelectProps {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly says: string }[];
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly help?: string;
  readonly hideLabel?: boolean;
}

/** One of many: the browser's own list, which every phone and reader knows. */
export function Select({ label, options, value, onChange, help, hideLabel = false }: SelectProps) {
  const id = useId();
  return (
    <div className="field">
      {!hideLabel && <label htmlFor={id}>{label}</label>}
      <select id={id} aria-label={hideLabel ? label : undefined} value={value} onChange={(event) => onChange(event.target.value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.says}
          </option>
        ))}
      </select>
      {help && <small>{help}</small>}
    </div>
  );
}
