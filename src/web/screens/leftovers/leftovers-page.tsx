import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { KitView } from '#api/kits.ts';
import { KIT, sayMade, sayOf, sayReturned } from '#say/en/kit-page.ts';
import { LEFTOVERS, sayExpected, sayLeftovers, saySum, sayTakeBack } from '#say/en/leftovers-page.ts';
import { useKit } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { useKeys } from '../../ui/keys.ts';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { FinishForm } from '../kit/finish-form.tsx';
import { useKitActs, type KitActs } from '../kit/kit-acts.ts';
import { KitLatest } from '../kit/kit-latest.tsx';
import { canPick, expectedPieces, likelyMade } from '../kit/kit.ts';
import { lastAct } from '../kit/walk.ts';
import { BackTable } from './back-table.tsx';
import { backsOf, keepTyped, readTyped, restOf, returnsOf, sumOfBacks, type Typed } from './leftovers.ts';
import './leftovers.css';

/** What is left in the cells after soldering goes back into the bags on their tags. */
export function LeftoversPage() {
  const { build } = useParams({ from: '/kits/$build/leftovers' });
  const kit = useKit(build);
  return (
    <main id="main" className="page leftovers" aria-busy={kit.waiting}>
      {kit.value ? <LeftoversBody key={build} kit={kit.value} /> : !kit.trouble && <Answer title={LEFTOVERS.reading} />}
      <TroubleNote trouble={kit.trouble} />
    </main>
  );
}

function LeftoversBody({ kit }: { readonly kit: KitView }) {
  const acts = useKitActs(kit.build.id);
  if (kit.build.state === 'built') return <Backs kit={kit} acts={acts} />;
  return canPick(kit) ? (
    <NotSoldered kit={kit} acts={acts} />
  ) : (
    <Answer title={LEFTOVERS.notOpen} why={sayOf(kit.build)}>
      <ToKit build={kit.build.id} />
    </Answer>
  );
}

function ToKit({ build }: { readonly build: string }) {
  return (
    <Link to="/kits/$build" params={{ build }} className="btn">
      {LEFTOVERS.toKit}
    </Link>
  );
}

interface PartProps {
  readonly kit: KitView;
  readonly acts: KitActs;
}

function NotSoldered({ kit, acts }: PartProps) {
  const likely = likelyMade(kit);
  return (
    <>
      <Answer title={LEFTOVERS.notSoldered} why={sayOf(kit.build)}>
        <ToKit build={kit.build.id} />
      </Answer>
      <KitLatest acts={acts} />
      <Note
        title={LEFTOVERS.notSolderedWhy}
        actions={
          <FinishForm
            key={likely}
            boards={kit.build.boards}
            likely={likely}
            busy={acts.busy}
            main
            onFinish={(made) => void acts.finish(sayMade, made)}
          />
        }
      />
    </>
  );
}

function Backs({ kit, acts }: PartProps) {
  const { id: build, name, made } = kit.build;
  const [typed, setTyped] = useState<Typed>(() => readTyped(sessionStorage, build));
  const backs = backsOf(kit.takes, typed);
  const sum = sumOfBacks(backs);
  const last = lastAct(kit.acts, 'leftovers-returned', 'built');
  const keep = (wanted: Typed): void => {
    setTyped(wanted);
    keepTyped(sessionStorage, build, wanted);
  };
  const ready = sum.sound && sum.pieces > 0 && !acts.busy;
  const book = async (): Promise<void> => {
    if (ready && (await acts.leftovers(sayReturned(sum.pieces), returnsOf(backs)))) keep({});
  };
  const rest = restOf(kit, sum);
  const close = async (): Promise<void> => {
    if (!acts.busy && (await acts.leftovers(LEFTOVERS.closed, rest))) keep({});
  };
  useKeys({ 'Ctrl+Enter': () => void book() });
  return (
    <>
      <Answer title={sayLeftovers(sum, backs.length)} why={`${name}: ${sayMade(made ?? 0)} ${sayExpected(expectedPieces(kit))}`}>
        <ToKit build={build} />
        {last && last.act !== acts.latest?.act && (
          <Button disabled={acts.busy} onClick={() => void acts.undo(last.act, LEFTOVERS.undone)}>
            {`${LEFTOVERS.undo}: ${last.kind === 'built' ? KIT.soldered : last.pieces === 0 ? LEFTOVERS.closed : sayReturned(last.pieces)}`}
          </Button>
        )}
      </Answer>
      <KitLatest acts={acts} />
      {backs.length > 0 && (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void book();
          }}
        >
          <BackTable backs={backs} onType={(take, text) => keep({ ...typed, [take]: text })} />
          <div className="total">
            <output>{saySum(sum)}</output>
            <Button look="main" submit disabled={!ready} keyHint="Ctrl+Enter">
              {sayTakeBack(sum.pieces)}
            </Button>
            {rest.length > 0 && (
              <Button disabled={acts.busy} onClick={() => void close()}>
                {LEFTOVERS.close}
              </Button>
            )}
            <span className="two s">{LEFTOVERS.kept}</span>
          </div>
          <p className="keys">
            <span>
              <kbd>Ctrl</kbd> <kbd>Enter</kbd> {LEFTOVERS.keys.take}
            </span>
          </p>
        </form>
      )}
    </>
  );
}
