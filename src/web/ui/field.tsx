import { useId, type ComponentProps } from 'react';

interface FieldProps extends Omit<ComponentProps<'input'>, 'id' | 'className'> {
  readonly label: string;
  readonly help?: string | undefined;
  /** what is wrong with the very text, and what to type; takes the place of the help */
  readonly wrong?: string | null | undefined;
  readonly ask?: boolean;
}

/** Takes a value: label above, one line of help or error below. */
export function Field({ label, help, wrong, ask = false, ...input }: FieldProps) {
  const id = useId();
  const below = wrong ?? help;
  return (
    <div className={['field', ask && 'ask', wrong && 'bad'].filter(Boolean).join(' ')}>
      <label htmlFor={id}>{label}</label>
      <input
        autoComplete="off"
        {...input}
        id={id}
        aria-invalid={wrong ? true : undefined}
        aria-describedby={below ? `${id}-below` : undefined}
      />
      {below && (
        <small id={`${id}-below`} role={wrong ? 'alert' : undefined}>
          {below}
        </small>
      )}
    </div>
  );
}
