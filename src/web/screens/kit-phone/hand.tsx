import { useEffect, useState, type ReactNode } from 'react';
import type { BoxesView } from '#api/bags.ts';
import type { KitTakeView } from '#api/kits.ts';
import { sayAreIn } from '#say/en/kit-page.ts';
import { sayStands } from '#say/en/place-words.ts';
import { PHONE, sayApart } from '#say/en/kit-phone-page.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';
import { Icon } from '../../ui/icon.tsx';
import { Note } from '../../ui/note.tsx';
import { Tag } from '../../ui/tag.tsx';
import { cellOf, handAnswer, stopName, toTake, type HandAnswer } from '../kit/walk.ts';
import { handNumber } from './phone.ts';
import type { Phone } from './use-phone.ts';

const BUZZ_MS = 40;

interface HandFormProps {
  /** the bag of the stop that is shown */
  readonly meant: number;
  readonly onHand: (bag: number) => void;
  readonly onClose: () => void;
}

/** Which bag is it? Its number is typed, since plain http gives no camera. */
export function HandForm({ meant, onHand, onClose }: HandFormProps) {
  const [text, setText] = useState('');
  const [tried, setTried] = useState(false);
  const bag = handNumber(text);
  return (
    <form
      className="fewer"
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (bag !== null) onHand(bag);
      }}
    >
      <Field
        label={PHONE.hand}
        value={text}
        inputMode="numeric"
        autoFocus
        onChange={(event) => setText(event.target.value)}
        wrong={tried && bag === null ? PHONE.handWrong(text) : null}
      />
      <Button look="main" submit>
        {PHONE.handGo}
      </Button>
      <Button onClick={onClose}>{PHONE.closeHand(meant)}</Button>
    </form>
  );
}

interface HandAnswerProps {
  readonly hand: number;
  readonly phone: Phone;
  readonly stop: KitTakeView;
  readonly boxes: BoxesView;
}

/** What the bag in the hand is, and the way on. */
export function HandAnswerView({ hand, phone, stop, boxes }: HandAnswerProps) {
  const { kit, acts, to, leave } = phone;
  const answer = handAnswer(hand, stop, kit.takes, boxes.boxes, boxes.loose);
  const right = answer.kind === 'right';
  useEffect(() => {
    if (right && 'vibrate' in navigator) navigator.vibrate(BUZZ_MS);
  }, [right]);
  if (answer.kind === 'right')
    return (
      <>
        <div className="good" role="status">
          <Icon sign="tick" />
          <b>{PHONE.right(stop.bag)}</b>
        </div>
        <Button look="main" disabled={acts.busy} onClick={phone.planned}>
          {sayAreIn(toTake(stop), cellOf(kit.takes, stop))}
        </Button>
        <Button onClick={() => to({ take: stopName(stop) })}>{PHONE.closeHand(stop.bag)}</Button>
      </>
    );
  const also = answer.kind === 'wrong' ? answer.also : null;
  return (
    <>
      <Wrong answer={answer} stop={stop} />
      <Button look="main" onClick={() => to({ take: stopName(stop), show: 'hand' })}>
        {PHONE.hand}
      </Button>
      <div className="sec">
        {also && <Button onClick={() => leave({ take: stopName(also) })}>{PHONE.also(also.cell)}</Button>}
        <Button onClick={() => to({ take: stopName(stop) })}>{PHONE.closeHand(stop.bag)}</Button>
      </div>
    </>
  );
}

function Wrong({
  answer,
  stop,
}: {
  readonly answer: Exclude<HandAnswer, { kind: 'right' }>;
  readonly stop: KitTakeView;
}): ReactNode {
  if (answer.kind === 'unknown')
    return (
      <Note kind="stop" title={PHONE.unknown(answer.bag)}>
        {PHONE.unknownWhy}
      </Note>
    );
  const { bag, box, depth, apart } = answer;
  return (
    <Note kind="stop" title={PHONE.wrong}>
      {PHONE.thatIs} <Tag bag={bag} size="sm" />. {PHONE.backTo(box)} {box !== null && depth && `${sayStands(depth)}.`}{' '}
      {apart === null ? (
        <>
          {PHONE.rightIs} <Tag bag={stop.bag} size="sm" />, {PHONE.nextBox(stop.box)}.
        </>
      ) : (
        sayApart(apart, stop.bag)
      )}
    </Note>
  );
}
