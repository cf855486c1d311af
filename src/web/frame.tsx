import { Link, Outlet, useLocation, useMatchRoute, useNavigate } from '@tanstack/react-router';
import { useEffect } from 'react';
import { PAIR_PAGE } from '#say/en/devices-page.ts';
import { UI } from '#say/en/ui.ts';
import { useHeard } from './lab/changes.ts';
import { useLab } from './lab/answers.ts';
import { Answer } from './ui/answer.tsx';
import { Bar, type Job } from './ui/bar.tsx';
import { useKeys } from './ui/keys.ts';
import { Note } from './ui/note.tsx';

/** The bar of jobs, the page, and the word that the lab can't be heard. */
export function Frame() {
  const lab = useLab();
  const { connected } = useHeard();
  const navigate = useNavigate();
  const pairing = Boolean(useMatchRoute()({ to: '/pair' }));
  const refused = lab.trouble?.kind === 'refused' ? lab.trouble.problem.code : null;
  const unknown = refused === 'wire-not-paired' && !pairing;
  const bare = useBare() || unknown;
  useKeys({
    '/': () => void navigate({ to: '/', search: { focus: '1' } }),
    'g f': () => void navigate({ to: '/', search: { focus: '1' } }),
    'g r': () => void navigate({ to: '/receive' }),
    'g b': () => void navigate({ to: '/boards' }),
    'g k': () => void navigate({ to: '/kits' }),
    'g x': () => void navigate({ to: '/boxes' }),
    '?': () => void navigate({ to: '/keys' }),
  });
  const title = useTitle();
  useEffect(() => {
    document.body.classList.toggle('bare', bare);
  }, [bare]);
  useEffect(() => {
    document.title = title;
  }, [title]);
  return (
    <>
      {!bare && <Bar jobs={jobsOf(lab.value?.kits ?? 0)} more={MORE} lab={lab.value?.demo ? UI.demo : null} />}
      {!connected && (
        <div className="page offline">
          <Note kind="stop" title={UI.offline}>
            {UI.offlineKept}
          </Note>
        </div>
      )}
      {unknown ? <UnknownDevice /> : <Outlet />}
    </>
  );
}

/** A device that the lab does not know sees nothing but how to join. */
function UnknownDevice() {
  return (
    <main id="main" className="page">
      <Answer title={PAIR_PAGE.unknown} why={PAIR_PAGE.unknownWay} />
    </main>
  );
}

const jobsOf = (kits: number): readonly Job[] => [
  { to: '/', name: UI.find },
  { to: '/receive', name: UI.receive, far: true },
  { to: '/boards', name: UI.boards },
  { to: '/kits', name: UI.kits, count: kits },
  { to: '/boxes', name: UI.boxes },
];

const MORE: readonly Job[] = [
  { to: '/stray', name: UI.stray },
  { to: '/history', name: UI.history },
  { to: '/devices', name: UI.devices },
  { to: '/keys', name: UI.keys },
];

/** What a tab and the history of the browser call a page: its job, and which one. */
function useTitle(): string {
  const { pathname } = useLocation();
  const match = useMatchRoute();
  const board = match({ to: '/boards/$board' });
  const job = [...jobsOf(0), ...MORE].find(({ to }) => (to === '/' ? pathname === '/' : pathname.startsWith(to)));
  return [board ? board.board : null, job?.name ?? null, UI.name].filter(Boolean).join(' · ');
}

/** Pages that need the whole screen: the first run, pairing, the phone at the boxes. */
function useBare(): boolean {
  const match = useMatchRoute();
  return Boolean(match({ to: '/begin' }) || match({ to: '/pair' }) || match({ to: '/kits/$build/pick' }));
}

export function NoPage() {
  return (
    <main id="main" className="page">
      <Answer title={UI.noPage}>
        <Link to="/" className="btn main">
          {UI.noPageWay}
        </Link>
      </Answer>
    </main>
  );
}

export function BrokePage() {
  return (
    <main id="main" className="page">
      <Answer title={UI.fault} why={UI.faultWay}>
        <button type="button" className="btn main" onClick={() => location.reload()}>
          {UI.reload}
        </button>
      </Answer>
    </main>
  );
}
