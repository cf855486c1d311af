import { useState, type FormEvent } from 'react';
import type { BagWithHistory } from '#api/bags.ts';
import { BAG_DRAWER, sayMoved, sayMovedMeanwhile } from '#say/en/bag-drawer.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';
import { Note } from '../../ui/note.tsx';
import { SumField, sumOf } from '../../ui/sum-field.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import type { BagActs, MoveBody } from './bag-acts.ts';
import { newestFirst, seenSeq } from './movements.ts';
import type { BagDeed } from './place.ts';

interface DeedFormProps {
  readonly bag: BagWithHistory;
  readonly deed: BagDeed;
  readonly acts: BagActs;
  readonly onClose: () => void;
}

/** Books a pick, a return or a count: how many, a note, Enter. */
export function DeedForm({ bag, deed, acts, onClose }: DeedFormProps) {
  const [many, setMany] = useState('');
  const [note, setNote] = useState('');
  const [asked, setAsked] = useState(false);
  // a count is of what was there when it began: what moves meanwhile comes on top of it
  const [saw, setSaw] = useState(() => seenSeq(bag.movements));
  const number = sumOf(many);
  const missing = many.trim() === '' || (number === 0 && deed !== 'count');
  const body = (): MoveBody | null => {
    if (number === null || missing) return null;
    const told = { bag: bag.bag, ...(note.trim() && { note: note.trim() }) };
    if (deed === 'count') return { ...told, kind: 'counted', counted: number, sawSeq: saw };
    return { ...told, kind: deed === 'pick' ? 'picked' : 'returned', quantity: number };
  };
  const book = async (wanted: MoveBody | null): Promise<void> => {
    setAsked(true);
    if (wanted && !acts.busy && (await acts.move(wanted))) onClose();
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    void book(body());
  };
  const inHand = (): void => {
    const wanted = body();
    if (wanted?.kind === 'picked') void book({ ...wanted, inHand: true });
  };
  return (
    <form
      className="deed"
      onSubmit={submit}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        onClose();
      }}
    >
      <SumField
        autoFocus
        label={deed === 'count' ? BAG_DRAWER.counted : BAG_DRAWER.howMany}
        value={many}
        onChange={(text) => {
          setMany(text);
          acts.forget();
        }}
        help={BAG_DRAWER.sumHelp}
        wrong={asked && missing ? BAG_DRAWER.needed : null}
      />
      <Field label={BAG_DRAWER.note} value={note} maxLength={1000} onChange={(event) => setNote(event.target.value)} />
      {deed === 'count' && <Meanwhile bag={bag} saw={saw} onAgain={() => setSaw(seenSeq(bag.movements))} />}
      <NotBooked acts={acts} onInHand={inHand} onBooked={onClose} />
      <p className="line">
        <Button look="main" submit disabled={acts.busy}>
          {BAG_DRAWER.book[deed]}
        </Button>
        <Button look="quiet" keyHint="Esc" onClick={onClose}>
          {BAG_DRAWER.leave}
        </Button>
      </p>
    </form>
  );
}

/** Somebody moved the bag while it was counted. */
function Meanwhile({ bag, saw, onAgain }: { readonly bag: BagWithHistory; readonly saw: number; readonly onAgain: () => void }) {
  const since = newestFirst(bag.movements).filter((move) => move.seq > saw);
  if (since.length === 0) return null;
  return (
    <Note
      kind="check"
      title={sayMovedMeanwhile(since.map(sayMoved).join(', '))}
      actions={<Button onClick={onAgain}>{BAG_DRAWER.countAgain}</Button>}
    />
  );
}

interface NotBookedProps {
  readonly acts: BagActs;
  readonly onInHand: () => void;
  readonly onBooked: () => void;
}

/** Why it was not booked, and the way on. */
function NotBooked({ acts, onInHand, onBooked }: NotBookedProps) {
  const { moveTrouble } = acts;
  if (moveTrouble?.kind === 'refused' && moveTrouble.problem.code === 'not-enough')
    return (
      <Note
        kind="stop"
        title={moveTrouble.problem.detail}
        actions={
          <Button disabled={acts.busy} onClick={onInHand}>
            {BAG_DRAWER.inHand}
          </Button>
        }
      />
    );
  const again = async (): Promise<void> => {
    if (await acts.moveAgain()) onBooked();
  };
  return <TroubleNote trouble={moveTrouble} again={() => void again()} />;
}
