import { useId, useState } from 'react';
import type { DraftDoubt, DraftRow } from '#api/drafts.ts';
import { DRAFT } from '#say/en/draft-page.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';

export interface Answering {
  /** what should stand in a field of a row, or null: right as it was read; true once it is kept */
  readonly answer: (row: number, field: string, text: string | null) => Promise<boolean>;
  readonly forget: (row: number, field: string) => void;
  readonly leaveOut: (row: number, out: boolean) => void;
}

interface DoubtProps extends Answering {
  readonly row: DraftRow;
  readonly doubt: DraftDoubt;
  /** the field where it is said stands open */
  readonly saying: boolean;
  readonly onSay: (open: boolean) => void;
  /** it is the last doubt of its row: the whole row can be left out there */
  readonly last: boolean;
}

/** A doubt as a question: why, the likely answers, and a field for any other. */
export function Doubt({ row, doubt, saying, onSay, last, answer, leaveOut }: DoubtProps) {
  const id = useId();
  const { field, why, settle, answers } = doubt;
  return (
    <div className="asked" role="group" aria-labelledby={id}>
      <p id={id}>
        <b className="warn">{why}</b> {!saying && <span className="two">{settle}</span>}
      </p>
      <div className="do">
        {answers.map(({ text, says }) => (
          <Button key={`${text} ${says}`} onClick={() => void answer(row.row, field, text)}>
            {says}
          </Button>
        ))}
        <Button onClick={() => void answer(row.row, field, null)}>{DRAFT.right}</Button>
        {!saying && <Button onClick={() => onSay(true)}>{DRAFT.say}</Button>}
        {last && (
          <Button look="quiet" onClick={() => leaveOut(row.row, true)}>
            {DRAFT.leaveOut}
          </Button>
        )}
      </div>
      {saying && <SayForm help={settle} onSay={(text) => answer(row.row, field, text)} onClose={() => onSay(false)} />}
    </div>
  );
}

interface SayFormProps {
  readonly help: string;
  readonly onSay: (text: string) => Promise<boolean>;
  readonly onClose: () => void;
}

/** What is typed stays until the draft holds it. */
function SayForm({ help, onSay, onClose }: SayFormProps) {
  const [text, setText] = useState('');
  const keep = async (): Promise<void> => {
    if (text.trim() && (await onSay(text.trim()))) onClose();
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
        label={DRAFT.sayField}
        help={help}
        value={text}
        maxLength={1000}
        autoFocus
        onChange={(event) => setText(event.target.value)}
      />
      <Button submit>{DRAFT.sayKeep}</Button>
      <Button look="quiet" onClick={onClose}>
        {DRAFT.sayClose}
      </Button>
    </form>
  );
}
