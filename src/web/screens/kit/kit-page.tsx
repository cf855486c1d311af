import { useParams } from '@tanstack/react-router';
import type { KitView } from '#api/kits.ts';
import { KIT } from '#say/en/kit-page.ts';
import { useBoxes, useKit } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { GivenUp } from './given-up.tsx';
import { KitDo, PutBack } from './kit-do.tsx';
import { KitFoot } from './kit-foot.tsx';
import { KitLatest } from './kit-latest.tsx';
import { KitProgress } from './kit-progress.tsx';
import { canPick, kitAnswer } from './kit.ts';
import { PhoneWay } from './phone-way.tsx';
import { RouteView } from './route-view.tsx';
import { TrayView } from './tray-view.tsx';
import { usePicking } from './use-picking.ts';
import { cautionsOf, traysOf } from './walk.ts';
import './kit.css';

/** One kit: what is picked, where the rest is, how it lies in the trays. */
export function KitPage() {
  const { build } = useParams({ from: '/kits/$build' });
  const kit = useKit(build);
  return (
    <main id="main" className="page kit" aria-busy={kit.waiting}>
      {kit.value ? <KitBody key={build} kit={kit.value} /> : !kit.trouble && <Answer title={KIT.reading} />}
      <TroubleNote trouble={kit.trouble} />
    </main>
  );
}

function KitBody({ kit }: { readonly kit: KitView }) {
  const boxes = useBoxes();
  const picking = usePicking(kit);
  const { chosen, acts, show } = picking;
  const [title, why] = kitAnswer(kit, canPick(kit) ? chosen : null);
  const gone = kit.build.state === 'cancelled';
  const cautions = gone ? [] : cautionsOf(kit.takes);
  return (
    <>
      <Answer title={title} why={why}>
        <KitDo kit={kit} picking={picking} />
      </Answer>
      {show === 'back' && <PutBack kit={kit} picking={picking} />}
      {show === 'phone' && <PhoneWay build={kit.build.id} />}
      <KitLatest acts={acts} />
      {canPick(kit) && <KitProgress takes={kit.takes} />}
      {cautions.map((caution) => (
        <Note key={caution} kind="check" title={KIT.cautions[caution]}>
          {KIT.cautionWhy}
        </Note>
      ))}
      {gone && <GivenUp kit={kit} acts={acts} />}
      {!gone && kit.takes.length > 0 && (
        <div className="two-up">
          <RouteView kit={kit} boxes={boxes.value?.boxes ?? []} picking={picking} />
          <div className="col">
            <TrayView trays={traysOf(kit.takes, canPick(kit) ? chosen : null)} going={canPick(kit)} />
            <KitFoot kit={kit} picking={picking} />
          </div>
        </div>
      )}
    </>
  );
}
