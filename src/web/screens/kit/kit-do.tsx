import { Link } from '@tanstack/react-router';
import type { KitView } from '#api/kits.ts';
import { KIT, sayPromised, sayPutBackQuestion, sayReturned } from '#say/en/kit-page.ts';
import { Button } from '../../ui/button.tsx';
import { Icon } from '../../ui/icon.tsx';
import { useNarrow } from '../../ui/narrow.ts';
import { Note } from '../../ui/note.tsx';
import { awaitsReturn, canPick, outPieces } from './kit.ts';
import type { Picking } from './use-picking.ts';

interface KitDoProps {
  readonly kit: KitView;
  readonly picking: Picking;
}

/** The way on with the kit, as its state is. */
export function KitDo({ kit, picking: { acts, to, chosen, show } }: KitDoProps) {
  const { id: build, state } = kit.build;
  const picks = canPick(kit);
  // a phone goes straight on; at the desk its address is shown first
  const narrow = useNarrow();
  return (
    <>
      {state === 'planned' && (
        <Button look="main" disabled={acts.busy} onClick={() => void acts.reserve(sayPromised(), false)}>
          {KIT.reserve}
        </Button>
      )}
      {picks && chosen && narrow && (
        <Link to="/kits/$build/pick" params={{ build }} className="btn">
          {KIT.phone}
        </Link>
      )}
      {picks && chosen && !narrow && (
        <Button aria-expanded={show === 'phone'} onClick={() => to(chosen, show === 'phone' ? undefined : 'phone')}>
          {KIT.phone}
        </Button>
      )}
      {awaitsReturn(kit) && (
        <Link to="/kits/$build/leftovers" params={{ build }} className="btn main">
          {KIT.leftovers}
        </Link>
      )}
      {kit.takes.length > 0 && state !== 'cancelled' && (
        <Link to="/kits/$build/sheet" params={{ build }} className="btn">
          <Icon sign="print" />
          {KIT.sheet}
        </Link>
      )}
      {(picks || state === 'planned') && (
        <Button look="quiet" aria-expanded={show === 'back'} onClick={() => to(chosen, show === 'back' ? undefined : 'back')}>
          {outPieces(kit) > 0 ? KIT.putBack : KIT.giveUp}
        </Button>
      )}
    </>
  );
}

/** Is it meant? Everything that was picked goes back, and the kit is given up; an undo is offered after it. */
export function PutBack({ kit, picking: { acts, to, chosen } }: KitDoProps) {
  const pieces = outPieces(kit);
  const giveUp = async (): Promise<void> => {
    if (await acts.cancel(sayReturned(pieces))) to(null);
  };
  return (
    <Note
      kind="check"
      title={sayPutBackQuestion(pieces)}
      actions={
        <>
          <Button look="stop" disabled={acts.busy} onClick={() => void giveUp()}>
            {pieces > 0 ? KIT.putBack : KIT.giveUp}
          </Button>
          <Button onClick={() => to(chosen)}>{KIT.keep}</Button>
        </>
      }
    />
  );
}
