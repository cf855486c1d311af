import { useState } from 'react';
import { DRAFT, saySayField } from '#say/en/draft-page.ts';
import { usePartReading } from '../../lab/answers.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';
import { Gloss } from '../../ui/gloss.tsx';

interface SayFormProps {
  readonly field: string;
  /** text to begin with */
  readonly begin?: string;
  readonly help?: string;
  /** why what was typed was refused */
  readonly refused: string | null;
  readonly onSay: (text: string) => Promise<boolean>;
  readonly onClose: () => void;
}

/** What is typed stays until the draft holds it; a part is shown as it is read before that. */
export function SayForm({ field, begin = '', help, refused, onSay, onClose }: SayFormProps) {
  const [text, setText] = useState(begin);
  const [told, setTold] = useState<string | null>(null);
  const keep = async (): Promise<void> => {
    const said = text.trim();
    if (!said) return;
    setTold(said);
    if (await onSay(said)) onClose();
  };
  return (
    <form
      className="sayform"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        onClose();
      }}
    >
      <Field
        label={saySayField(field)}
        help={help}
        wrong={told === text.trim() ? refused : null}
        value={text}
        maxLength={1000}
        autoFocus
        onChange={(event) => setText(event.target.value)}
      />
      <Button submit>{DRAFT.sayKeep}</Button>
      <Button look="quiet" onClick={onClose}>
        {DRAFT.sayClose}
      </Button>
      {field === 'part' && <Preview text={text} />}
    </form>
  );
}

/** How a part is read while it is typed. */
function Preview({ text }: { readonly text: string }) {
  const { value } = usePartReading(text);
  if (!value || !text.trim()) return null;
  return (
    <div className="preview" aria-live="polite">
      <Gloss pieces={value.gloss} />
      <p className="s two">
        {DRAFT.readAs} <b>{value.said.name}</b> {value.said.rest}
      </p>
    </div>
  );
}
