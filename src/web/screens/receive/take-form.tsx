import { useId, useRef, useState, type RefObject } from 'react';
import type { BagView, BoxesView, PartReading } from '#api/bags.ts';
import { RECEIVE } from '#say/en/receive-page.ts';
import { usePartReading } from '../../lab/answers.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { Field } from '../../ui/field.tsx';
import { Gloss } from '../../ui/gloss.tsx';
import { Note } from '../../ui/note.tsx';
import { sumOf, SumField } from '../../ui/sum-field.tsx';
import { bagNumber } from './receive.ts';
import { TakenNote } from './taken-note.tsx';
import type { Asking } from './use-taking.ts';

interface TakeFormProps {
  readonly bags: readonly BagView[];
  readonly boxes: BoxesView | undefined;
  /** the number that is next, unless another is typed */
  readonly next: number;
  readonly box: string;
  readonly onBox: (box: string) => void;
  readonly begin: { readonly says: string; readonly bag: string | null };
  readonly onNumber: (bag: number) => void;
  readonly busy: boolean;
  readonly onTake: (asking: Asking) => Promise<boolean>;
  readonly onAdd: (bag: BagView, quantity: number) => Promise<boolean>;
}

/** One bag: its number, what it says, how many, where it goes. Enter books it and goes on to the next. */
export function TakeForm({ bags, boxes, next, box, onBox, begin, onNumber, busy, onTake, onAdd }: TakeFormProps) {
  const saysField = useRef<HTMLInputElement>(null);
  const boxNames = useId();
  const [number, setNumber] = useState(begin.bag);
  const [says, setSays] = useState(begin.says);
  const [many, setMany] = useState('');
  const [about, setAbout] = useState(false);
  const [tried, setTried] = useState(false);
  const reading = usePartReading(says);
  const bag = number === null ? next : bagNumber(number);
  const there = bags.find((one) => one.bag === bag);
  const quantity = sumOf(many);
  const setBag = (text: string | null): void => {
    setNumber(text);
    onNumber((text === null ? null : bagNumber(text)) ?? next);
  };
  const clear = (): void => {
    setBag(null);
    setSays('');
    setMany('');
    setAbout(false);
    setTried(false);
    saysField.current?.focus();
  };
  const book = async (): Promise<void> => {
    setTried(true);
    if (busy || bag === null || there || !says.trim() || quantity === null) return;
    const asking = { says: says.trim(), quantity, bag, ...(about && { about }), ...(box.trim() && { box: box.trim() }) };
    if (await onTake(asking)) clear();
  };
  return (
    <form
      className="takeform"
      onSubmit={(event) => {
        event.preventDefault();
        void book();
      }}
    >
      <div className="says">
        <SaysField field={saysField} value={says} onChange={setSays} missing={tried && !says.trim()} />
        {reading.value && says.trim() !== '' && <Reading reading={reading.value} />}
      </div>
      <div className="line3">
        <Field
          label={RECEIVE.number}
          help={number === null ? RECEIVE.numberHelp : RECEIVE.numberNew}
          wrong={bag === null && number !== null ? RECEIVE.numberWrong(number) : null}
          value={number ?? String(next)}
          inputMode="numeric"
          onChange={(event) => setBag(event.target.value === String(next) ? null : event.target.value)}
        />
        <SumField
          label={RECEIVE.many}
          value={many}
          onChange={setMany}
          help={RECEIVE.manyHelp}
          wrong={tried && many.trim() === '' ? RECEIVE.manyMissing : null}
        />
        <Choice
          legend={RECEIVE.about}
          options={[
            { value: 'counted', says: RECEIVE.counted },
            { value: 'about', says: RECEIVE.estimate },
          ]}
          value={about ? 'about' : 'counted'}
          onChange={(value) => setAbout(value === 'about')}
          {...(about && { help: RECEIVE.estimateHelp })}
        />
        <Field
          label={RECEIVE.box}
          help={RECEIVE.boxHelp}
          value={box}
          list={boxNames}
          maxLength={100}
          onChange={(event) => onBox(event.target.value)}
        />
        <datalist id={boxNames}>
          {boxes?.boxes.map(({ name }) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      </div>
      {there && (
        <TakenNote
          bag={there}
          quantity={quantity}
          next={next}
          onAdd={() => {
            if (quantity && !busy) void onAdd(there, quantity).then((done) => done && clear());
          }}
          onNext={() => setBag(null)}
        />
      )}
      <p className="do">
        <Button look="main" submit keyHint="Enter" aria-disabled={busy || there !== undefined}>
          {RECEIVE.take(bag)}
        </Button>
      </p>
    </form>
  );
}

interface SaysFieldProps {
  readonly field: RefObject<HTMLInputElement | null>;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly missing: boolean;
}

function SaysField({ field, value, onChange, missing }: SaysFieldProps) {
  return (
    <Field
      ref={field}
      ask
      autoFocus
      label={RECEIVE.says}
      help={RECEIVE.saysHelp}
      wrong={missing ? RECEIVE.saysMissing : null}
      value={value}
      maxLength={1000}
      spellCheck={false}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}

/** What was typed over what it was read as, and what is not sure of it. */
function Reading({ reading }: { readonly reading: PartReading }) {
  return (
    <div className="readas" aria-live="polite">
      <Gloss pieces={reading.gloss} />
      <p className="s two">
        <b>{reading.said.name}</b> {reading.said.rest} <span className="code">{reading.code}</span>
      </p>
      {reading.doubts.map(({ field, why, settle }) => (
        <Note key={`${field} ${why}`} kind="check" title={why}>
          {settle} {RECEIVE.doubtsKept}
        </Note>
      ))}
    </div>
  );
}
