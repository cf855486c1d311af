import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import type { Begun, Cleared, LabView } from '#api/lab.ts';
import { BEGIN, sayHolds } from '#say/en/begin-page.ts';
import { UI } from '#say/en/ui.ts';
import { useAct } from '../../lab/act.ts';
import { useLab } from '../../lab/answers.ts';
import { fileIs } from '../../lab/bring-file.ts';
import { useBring } from '../../lab/bring.ts';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';
import { usePageDrop } from '../../ui/page-drop.ts';
import { HomeTag } from '../../ui/tag.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { useRestore } from './begin.ts';
import { Doors, ListDoor } from './doors.tsx';
import './begin.css';

/** How the lab begins; of a lab that has begun, what is in it and the ways on. */
export function BeginPage() {
  const lab = useLab();
  const navigate = useNavigate();
  const home = (): void => void navigate({ to: '/' });
  const demo = useAct<object, Begun>('/api/lab/demo');
  const clear = useAct<object, Cleared>('/api/lab/clear');
  const list = useBring('list');
  const backup = useRestore(home);
  const [wrong, setWrong] = useState<string | null>(null);
  const empty = lab.value?.empty ?? false;
  const take = (file: File, is: 'table' | 'backup' | 'neither'): void => {
    setWrong(is === 'neither' || (is === 'backup' && !empty) ? file.name : null);
    if (is === 'table') list.bring(file);
    if (is === 'backup' && empty) backup.restore(file);
  };
  usePageDrop((file) => take(file, fileIs(file.name)));
  const busy = demo.busy || clear.busy || list.reading !== null || backup.file !== null;
  const onDemo = async (): Promise<void> => {
    if (await demo.run({})) home();
  };
  const said = saidBusy({ demo: demo.busy, clear: clear.busy, list: list.reading, backup: backup.file });
  const { title, why } = said ?? saidOf(lab.value);
  return (
    <main id="main" className="page first" aria-busy={busy}>
      <header className="top">
        <Link className="home" to="/">
          <HomeTag />
          Bagatelle
        </Link>
        <div aria-live="polite">
          <h1>{title}</h1>
          <p className="lead">{why}</p>
        </div>
        {lab.value && !empty && <WaysOn />}
      </header>
      {clear.done && empty && (
        <Note kind="go" title={BEGIN.cleared}>
          {clear.done.backup && BEGIN.clearedKept(clear.done.backup)}
        </Note>
      )}
      {wrong && <Note kind="stop" title={BEGIN.fileWrong(wrong)} />}
      <TroubleNote trouble={lab.trouble} />
      <TroubleNote trouble={demo.trouble} again={() => void demo.again().then((done) => done && home())} />
      <TroubleNote trouble={clear.trouble} again={() => void clear.again()} />
      <TroubleNote trouble={list.trouble} again={list.again} />
      <TroubleNote trouble={backup.trouble} again={backup.again} />
      {lab.value &&
        (empty ? (
          <Doors
            busy={busy}
            onDemo={() => void onDemo()}
            onList={(file) => take(file, 'table')}
            onBackup={(file) => take(file, 'backup')}
          />
        ) : (
          <>
            {lab.value.demo && (
              <Note
                title={BEGIN.demoStands}
                actions={
                  <Button look="stop" disabled={busy} onClick={() => void clear.run({})}>
                    {BEGIN.clear}
                  </Button>
                }
              >
                {BEGIN.clearWhy}
              </Note>
            )}
            <ol className="ways">
              <ListDoor name={BEGIN.another} why={BEGIN.anotherWhy} onList={(file) => take(file, 'table')} busy={busy} />
            </ol>
          </>
        ))}
    </main>
  );
}

function WaysOn() {
  return (
    <p className="do">
      <Link className="btn main" to="/">
        {BEGIN.find}
      </Link>
      <Link className="btn" to="/receive">
        {BEGIN.receive}
      </Link>
      <Link className="btn" to="/boards">
        {BEGIN.boards}
      </Link>
    </p>
  );
}

interface Said {
  readonly title: string;
  readonly why: string;
}

function saidOf(lab: LabView | undefined): Said {
  if (!lab) return { title: UI.reading, why: '' };
  return lab.empty ? { title: BEGIN.title, why: BEGIN.lead } : { title: sayHolds(lab), why: BEGIN.notEmptyWhy };
}

interface Busy {
  readonly demo: boolean;
  readonly clear: boolean;
  readonly list: string | null;
  readonly backup: string | null;
}

function saidBusy({ demo, clear, list, backup }: Busy): Said | null {
  if (demo) return { title: BEGIN.demoBusy, why: BEGIN.demoBusyWhy };
  if (clear) return { title: BEGIN.clearBusy, why: BEGIN.clearWhy };
  if (list !== null) return { title: BEGIN.listBusy(list), why: BEGIN.listBusyWhy };
  if (backup !== null) return { title: BEGIN.backupBusy(backup), why: BEGIN.backupBusyWhy };
  return null;
}
