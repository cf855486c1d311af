import { Link, useParams } from '@tanstack/react-router';
import type { KitView } from '#api/kits.ts';
import { KIT, sayIn, sayRail } from '#say/en/kit-page.ts';
import { PHONE } from '#say/en/kit-phone-page.ts';
import { useBoxes, useKit } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { Icon } from '../../ui/icon.tsx';
import { Rail } from '../../ui/rail.tsx';
import { Named } from '../../ui/named.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { canPick } from '../kit/kit.ts';
import { isOpen } from '../kit/walk.ts';
import { AllDone, NotOpen } from './all-done.tsx';
import { StopFacts } from './stop-facts.tsx';
import { Thumb } from './thumb.tsx';
import { usePhone } from './use-phone.ts';
import './kit-phone.css';

/** For standing at the boxes with one hand: facts at the top, everything to press below. */
export function KitPhonePage() {
  const { build } = useParams({ from: '/kits/$build/pick' });
  const kit = useKit(build);
  if (!kit.value)
    return (
      <main id="main" className="page">
        {!kit.trouble && <Answer title={KIT.reading} />}
        <TroubleNote trouble={kit.trouble} />
      </main>
    );
  return <PhoneBody key={build} kit={kit.value} />;
}

function PhoneBody({ kit }: { readonly kit: KitView }) {
  const phone = usePhone(kit);
  const boxes = useBoxes();
  const { build, takes } = kit;
  const done = takes.filter((take) => !isOpen(take)).length;
  const { stop } = phone;
  return (
    <main id="main" className="page onehand" aria-busy={phone.acts.busy}>
      <div className="topline">
        <h1>
          <Named says={PHONE.title(build.name, build.boards)} name={build.name} />
        </h1>
        <Link to="/kits/$build" params={{ build: build.id }} className="btn" aria-label={PHONE.close}>
          <Icon sign="close" />
        </Link>
      </div>
      <div className="prog">
        <Rail done={done} all={takes.length} says={sayRail(done, takes.length)} />
        <span>{sayIn(done, takes.length)}</span>
      </div>
      {!canPick(kit) ? (
        <NotOpen kit={kit} />
      ) : stop ? (
        <>
          <StopFacts stop={stop} after={phone.after} takes={takes} boxes={boxes.value?.boxes ?? []} />
          <Thumb key={stop.id} phone={phone} stop={stop} boxes={boxes.value} />
        </>
      ) : (
        <AllDone phone={phone} />
      )}
    </main>
  );
}
