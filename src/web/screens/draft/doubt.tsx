import { useId } from 'react';
import type { DraftDoubt, DraftRow } from '#api/drafts.ts';
import { DRAFT, saySay } from '#say/en/draft-page.ts';
import { Button } from '../../ui/button.tsx';
import { SayForm } from './say-form.tsx';

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
  /** why what was typed there was refused */
  readonly refused: string | null;
  /** the whole row can be left out here */
  readonly canLeave: boolean;
}

/** A doubt as a question: why, the likely answers, and a field for any other. */
export function Doubt({ row, doubt, saying, onSay, refused, canLeave, answer, leaveOut }: DoubtProps) {
  const id = useId();
  const { field, why, settle, answers, right } = doubt;
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
        {right !== null && <Button onClick={() => void answer(row.row, field, null)}>{right}</Button>}
        {!saying && <Button onClick={() => onSay(true)}>{saySay(field)}</Button>}
        {canLeave && (
          <Button look={doubt.stops ? 'plain' : 'quiet'} onClick={() => leaveOut(row.row, true)}>
            {DRAFT.leaveOut}
          </Button>
        )}
      </div>
      {saying && (
        <SayForm
          field={field}
          help={settle}
          refused={refused}
          onSay={(text) => answer(row.row, field, text)}
          onClose={() => onSay(false)}
        />
      )}
    </div>
  );
}
