interface TickProps {
  readonly legend: string;
  readonly says: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
}

/** One thing that is seen or not: a native box. */
export function Tick({ legend, says, on, onChange }: TickProps) {
  return (
    <fieldset className="choice">
      <legend>{legend}</legend>
      <label>
        <input type="checkbox" checked={on} onChange={(event) => onChange(event.target.checked)} />
        {says}
      </label>
    </fieldset>
  );
}
