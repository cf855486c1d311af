import { useState, type FormEvent } from 'react';
import type { BoardLine, LineDetail } from '#api/boards.ts';
import { BOARD_LINE } from '#say/en/board-line.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';
import { useKeys } from '../../ui/keys.ts';
import type { BoardActs } from './board-acts.ts';
import { choiceOf, type LineChoice } from './line-choice.ts';
import type { BoardPlace } from './place.ts';

interface LineActionsProps {
  readonly line: BoardLine;
  readonly detail: LineDetail;
  readonly place: BoardPlace;
  readonly acts: BoardActs;
  /** the other bags are asked for, now */
  readonly onOthers: () => void;
}

/** Accept the check, take another bag, fit later: what is done about a line. */
export function LineActions({ line, detail, place, acts, onOthers }: LineActionsProps) {
  const choice = choiceOf(line, detail, place.bag);
  const { bag, how, canFree, canLater, canFit } = choice;
  const fitted = canLater || canFit;
  const accept = async (): Promise<void> => {
    if (bag === null || how === 'anyway' || acts.busy) return;
    await (how === 'accept' ? acts.accept(line, bag) : acts.take(line, bag, ''));
    place.acted();
  };
  const later = (): void => {
    if (fitted && !acts.busy) void acts.later(line, canLater);
  };
  const others = (): void => {
    if (!fitted) return;
    onOthers();
    place.go(place.others ? { show: null, bag: null } : { show: 'others' }, 'replace');
  };
  useKeys({ a: () => void accept(), f: later, o: others });
  if (!fitted && !canFree) return line.fitted ? null : <p className="s two">{BOARD_LINE.notFitted}</p>;
  return (
    <>
      {bag !== null && how === 'anyway' && (
        <AnywayForm
          key={bag}
          bag={bag}
          busy={acts.busy}
          onTake={async (reason) => {
            await acts.take(line, bag, reason);
            place.acted();
          }}
        />
      )}
      <div className="do">
        {bag !== null && how !== 'anyway' && (
          <AcceptButton choice={choice} bag={bag} busy={acts.busy} onAccept={() => void accept()} />
        )}
        {fitted && (
          <Button keyHint="O" aria-expanded={place.others} onClick={others}>
            {place.others && place.bag !== null ? BOARD_LINE.hideOthers : BOARD_LINE.otherBag}
          </Button>
        )}
        {fitted && (
          <Button keyHint="F" disabled={acts.busy} onClick={later}>
            {canLater ? BOARD_LINE.later : BOARD_LINE.again}
          </Button>
        )}
        {canFree && (
          <Button disabled={acts.busy} onClick={() => void acts.free(line)}>
            {BOARD_LINE.takeBack}
          </Button>
        )}
      </div>
    </>
  );
}

interface AcceptButtonProps {
  readonly choice: LineChoice;
  readonly bag: number;
  readonly busy: boolean;
  readonly onAccept: () => void;
}

function AcceptButton({ choice, bag, busy, onAccept }: AcceptButtonProps) {
  return (
    <Button keyHint="A" disabled={busy} onClick={onAccept}>
      {choice.how === 'accept' ? BOARD_LINE.accept(bag) : BOARD_LINE.takeInstead(bag)}
    </Button>
  );
}

interface AnywayFormProps {
  readonly bag: number;
  readonly busy: boolean;
  readonly onTake: (reason: string) => Promise<void>;
}

/** A bag that does not serve by the facts is taken only with a reason. */
function AnywayForm({ bag, busy, onTake }: AnywayFormProps) {
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (reason.trim() === '') setAsked(true);
    else if (!busy) void onTake(reason);
  };
  return (
    <form className="stack" onSubmit={submit}>
      <Field
        label={BOARD_LINE.reason}
        help={BOARD_LINE.reasonHelp}
        wrong={asked && reason.trim() === '' ? BOARD_LINE.reasonWanted : null}
        value={reason}
        maxLength={1000}
        onChange={(event) => setReason(event.target.value)}
      />
      <div>
        <Button submit disabled={busy}>
          {BOARD_LINE.takeAnyway(bag)}
        </Button>
      </div>
    </form>
  );
}
