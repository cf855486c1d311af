import { useId, useState } from 'react';
import { UI } from '#say/en/ui.ts';
import { Icon } from './icon.tsx';

interface StepProps {
  readonly label: string;
  readonly value: number;
  readonly least?: number;
  readonly most?: number;
  readonly onChange: (value: number) => void;
}

/** A small whole number to nudge or to type; what is typed counts when the field is left or Enter is pressed. */
export function Step({ label, value, least = 1, most = 9999, onChange }: StepProps) {
  const id = useId();
  // what is being typed holds until the value changes under it
  const [typed, setTyped] = useState<{ readonly over: number; readonly text: string } | null>(null);
  const text = typed?.over === value ? typed.text : String(value);
  const setText = (wanted: string): void => setTyped({ over: value, text: wanted });
  const set = (wanted: number): void => {
    const kept = Math.min(most, Math.max(least, wanted));
    setText(String(kept));
    if (kept !== value) onChange(kept);
  };
  const settle = (): void => (/^\d{1,9}$/.test(text.trim()) ? set(Number(text)) : setText(String(value)));
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="step">
        <button type="button" aria-label={UI.less} disabled={value <= least} onClick={() => set(value - 1)}>
          <Icon sign="minus" />
        </button>
        <input
          id={id}
          inputMode="numeric"
          autoComplete="off"
          value={text}
          onChange={(event) => setText(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key === 'ArrowUp') set(value + 1);
            if (event.key === 'ArrowDown') set(value - 1);
          }}
        />
        <button type="button" aria-label={UI.moreOf} disabled={value >= most} onClick={() => set(value + 1)}>
          <Icon sign="plus" />
        </button>
      </span>
    </div>
  );
}
