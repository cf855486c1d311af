import type { BoxesView } from '#api/bags.ts';
import type { KitTakeView } from '#api/kits.ts';
import { KIT, sayAllOfBox, sayAreIn, sayUndoPick } from '#say/en/kit-page.ts';
import { PHONE } from '#say/en/kit-phone-page.ts';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';
import { FewerForm } from '../kit/fewer-form.tsx';
import { KitTrouble } from '../kit/kit-latest.tsx';
import { cellOf, isOpen, lastPick, stopName, toTake } from '../kit/walk.ts';
import { HandAnswerView, HandForm } from './hand.tsx';
import { handNumber } from './phone.ts';
import type { Phone } from './use-phone.ts';

interface ThumbProps {
  readonly phone: Phone;
  readonly stop: KitTakeView;
  readonly boxes: BoxesView | undefined;
}

/** All that is to press, under the thumb. */
export function Thumb({ phone, stop, boxes }: ThumbProps) {
  const { words, acts, to, meanwhile } = phone;
  const hand = words.hand === undefined ? null : handNumber(words.hand);
  return (
    <div className="thumb">
      <div className="heard" aria-live="polite">
        <KitTrouble acts={acts} />
        {meanwhile && !acts.trouble && <p className="told">{meanwhile}</p>}
        <Warned phone={phone} />
      </div>
      {words.show === 'fewer' ? (
        <Fewer phone={phone} stop={stop} />
      ) : words.show === 'hand' ? (
        <HandForm
          meant={stop.bag}
          onHand={(bag) => to({ take: stopName(stop), hand: String(bag) })}
          onClose={() => to({ take: stopName(stop) })}
        />
      ) : hand !== null && boxes ? (
        <HandAnswerView key={hand} hand={hand} phone={phone} stop={stop} boxes={boxes} />
      ) : (
        <Pressed phone={phone} stop={stop} />
      )}
    </div>
  );
}

/** What the lab said of the last pick, besides that it is booked. */
function Warned({ phone: { acts } }: { readonly phone: Phone }) {
  const { latest } = acts;
  if (!latest || acts.trouble) return null;
  if (latest.warnings.length > 0) return <Note kind="check" title={latest.warnings.map(({ text }) => text).join(' ')} />;
  return <p className="told">{latest.says}</p>;
}

function Pressed({ phone, stop }: { readonly phone: Phone; readonly stop: KitTakeView }) {
  const { acts, kit, to, atOnce } = phone;
  const open = kit.takes.filter((take) => take.box === stop.box && isOpen(take));
  const last = lastPick(kit.acts);
  const take = stopName(stop);
  return (
    <>
      <Button look="main" disabled={acts.busy} onClick={phone.planned}>
        {sayAreIn(toTake(stop), cellOf(kit.takes, stop))}
      </Button>
      {atOnce.length > 1 && (
        <Button disabled={acts.busy} onClick={phone.allOfBox}>
          {sayAllOfBox(atOnce.length, open.length, stop.box)}
        </Button>
      )}
      <div className="sec">
        <Button disabled={acts.busy} onClick={() => to({ take, show: 'fewer' })}>
          {KIT.fewer}
        </Button>
        <Button disabled={acts.busy} onClick={phone.skip}>
          {KIT.skip}
        </Button>
        <Button onClick={() => to({ take, show: 'hand' })}>{PHONE.check}</Button>
        {last && (
          <Button disabled={acts.busy} onClick={() => void acts.undo(last.act, KIT.undone)}>
            {sayUndoPick(last.pieces, last.takes.length)}
          </Button>
        )}
      </div>
      {!window.isSecureContext && <p className="plain">{PHONE.plain}</p>}
    </>
  );
}

function Fewer({ phone, stop }: { readonly phone: Phone; readonly stop: KitTakeView }) {
  const { acts, to, leave, gone, after } = phone;
  return (
    <>
      <FewerForm
        take={stop}
        where={cellOf(phone.kit.takes, stop)}
        busy={acts.busy || gone}
        onPut={phone.put}
        onClose={() => (gone ? leave({}) : to({ take: stopName(stop) }))}
      />
      {gone && after && <Button onClick={() => leave({})}>{PHONE.goOn}</Button>}
    </>
  );
}
