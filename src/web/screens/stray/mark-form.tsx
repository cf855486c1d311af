import { STRAY_PAGE } from '#say/en/stray-page.ts';
import { Field } from '../../ui/field.tsx';
import type { StrayPlace } from './place.ts';
import { Tick } from './tick.tsx';

interface MarkProps {
  readonly place: StrayPlace;
  readonly text: string;
  readonly onText: (text: string) => void;
}

/** Says what is printed on the part. */
export function MarkForm({ place, text, onText }: MarkProps) {
  return (
    <div className="stack">
      <Field
        ask
        label={STRAY_PAGE.mark}
        help={STRAY_PAGE.markHelp}
        value={text}
        spellCheck={false}
        autoCapitalize="none"
        autoCorrect="off"
        onChange={(event) => onText(event.target.value)}
      />
      <Tick
        legend={STRAY_PAGE.more}
        says={STRAY_PAGE.underlined}
        on={place.underlined}
        onChange={(underlined) => place.go({ underlined })}
      />
    </div>
  );
}
