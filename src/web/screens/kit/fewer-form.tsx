import { useState } from 'react';
import type { KitTakeView } from '#api/kits.ts';
import { KIT, sayAreIn, sayEnough, sayPutShort, sayPutSome, type CellName } from '#say/en/kit-page.ts';
import { Button } from '../../ui/button.tsx';
import { sumOf, SumField } from '../../ui/sum-field.tsx';
import { isEnough, toTake, type Ending } from './walk.ts';

interface FewerFormProps {
  readonly take: KitTakeView;
  readonly where: CellName;
  readonly busy: boolean;
  /** without an ending the rest comes later */
  readonly onPut: (quantity: number, ending?: Ending) => void;
  readonly onClose: () => void;
}

/** What really went into the cell, where that is not as planned. */
export function FewerForm({ take, where, busy, onPut, onClose }: FewerFormProps) {
  const [text, setText] = useState('');
  const pieces = sumOf(text);
  const fewer = pieces !== null && pieces < toTake(take);
  return (
    <form
      className="fewer"
      onSubmit={(event) => {
        event.preventDefault();
        if (pieces !== null && !busy) onPut(pieces, fewer ? 'short' : undefined);
      }}
    >
      <SumField label={KIT.howMany(where)} value={text} onChange={setText} help={KIT.howManyHelp} autoFocus />
      <Button look="main" submit disabled={busy || pieces === null}>
        {pieces === null ? KIT.fewer : fewer ? sayPutShort(pieces, where) : sayAreIn(pieces, where)}
      </Button>
      <div className="sec">
        {fewer && isEnough(take, pieces) && (
          <Button disabled={busy} onClick={() => onPut(pieces, 'enough')}>
            {sayEnough(take.picked + pieces)}
          </Button>
        )}
        {fewer && pieces > 0 && (
          <Button disabled={busy} onClick={() => onPut(pieces)}>
            {sayPutSome(pieces, where)}
          </Button>
        )}
        <Button onClick={onClose}>{KIT.fewerClose}</Button>
      </div>
    </form>
  );
}
