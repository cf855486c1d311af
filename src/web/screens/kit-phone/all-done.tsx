import { Link } from '@tanstack/react-router';
import type { KitView } from '#api/kits.ts';
import { KIT, sayFewer, sayUndoPick } from '#say/en/kit-page.ts';
import { PHONE } from '#say/en/kit-phone-page.ts';
import { Button } from '../../ui/button.tsx';
import { FinishForm } from '../kit/finish-form.tsx';
import { KitLatest } from '../kit/kit-latest.tsx';
import { kitAnswer, likelyMade } from '../kit/kit.ts';
import { fewerCells, lastPick } from '../kit/walk.ts';
import type { Phone } from './use-phone.ts';

/** Nothing more to pick: on to soldering. */
export function AllDone({ phone }: { readonly phone: Phone }) {
  const { kit, acts } = phone;
  const last = lastPick(kit.acts);
  const fewer = fewerCells(kit.takes);
  const likely = likelyMade(kit);
  return (
    <>
      <div className="job">
        <p className="all">{kit.takes.length > 0 ? PHONE.done : kitAnswer(kit, null)[0]}</p>
        {fewer.length > 0 && <p className="warn">{sayFewer(fewer)}</p>}
        {phone.meanwhile && <p className="two">{phone.meanwhile}</p>}
        <KitLatest acts={acts} quiet />
        <p className="two">{KIT.afterWhy}</p>
      </div>
      <div className="thumb">
        <Link to="/kits/$build" params={{ build: kit.build.id }} className="btn main">
          {PHONE.doneTo}
        </Link>
        <FinishForm key={likely} boards={kit.build.boards} likely={likely} busy={acts.busy} onFinish={phone.finish} />
        {last && (
          <Button disabled={acts.busy} onClick={() => void acts.undo(last.act, KIT.undone)}>
            {sayUndoPick(last.pieces, last.takes.length)}
          </Button>
        )}
      </div>
    </>
  );
}

/** A kit that is planned, soldered or given up has no stop to show. */
export function NotOpen({ kit }: { readonly kit: KitView }) {
  return (
    <>
      <div className="job">
        <p className="all">{kitAnswer(kit, null)[0]}</p>
        <p className="two">{PHONE.notOpen}</p>
      </div>
      <div className="thumb">
        <Link to="/kits/$build" params={{ build: kit.build.id }} className="btn main">
          {PHONE.toKit}
        </Link>
      </div>
    </>
  );
}
