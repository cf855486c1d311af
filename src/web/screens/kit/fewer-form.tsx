import { useState } from 'react';
import type { KitTakeView } from '#api/kits.ts';
import { KIT, sayAreIn, sayPutShort, sayPutSome, type CellName } from '#say/en/kit-page.ts';
import { Button } from '../../ui/button.tsx';
import { sumOf, SumField } from '../../ui/sum-field.tsx';
import { toTake } from './walk.ts';

interface FewerFormProps {
  readonly take: KitTakeView;
  readonly where: CellName;
  readonly busy: boolean;
  /** `short`: the bag gave no more */
  readonly onPut: (quantity: number, short: boolean) => void;
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
        if (pieces !== null && !busy) onPut(pieces, fewer);
      }}
    >
      <SumField label={KIT.howMany(where)} value={text} onChange={setText} help={KIT.howManyHelp} autoFocus />
      <Button look="main" submit disabled={busy || pieces === null}>
        {pieces === null ? KIT.fewer : fewer ? sayPutShort(pieces, where) : sayAreIn(pieces, where)}
      </Button>
      <div className="sec">
        {fewer && pieces > 0 && (
          <Button disabled={busy} onClick={() => onPut(pieces, false)}>
            {sayPutSome(pieces, where)}
          </Button>
        )}
        <Button onClick={onClose}>{KIT.fewerClose}</Button>
      </div>
    </form>
  );
}
