import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { BEGIN } from '#say/en/begin-page.ts';
import { BACKUPS, TABLES } from '../../lab/bring-file.ts';
import { Button } from '../../ui/button.tsx';
import { DropFile } from '../../ui/drop-file.tsx';
import { BoxBegun, FirstBag, FullBox, Sheet, Stack } from './pictures.tsx';

interface DoorProps {
  readonly picture: ReactNode;
  readonly name: string;
  readonly why: string;
  readonly children: ReactNode;
}

/** One way in: a drawing, what it is, one thing to press. */
export function Door({ picture, name, why, children }: DoorProps) {
  return (
    <li>
      <div className="pic">{picture}</div>
      <div className="txt">
        <h2>{name}</h2>
        <p>{why}</p>
      </div>
      <div className="way">{children}</div>
    </li>
  );
}

interface DoorsProps {
  readonly onDemo: () => void;
  readonly onList: (file: File) => void;
  readonly onBackup: (file: File) => void;
  readonly busy: boolean;
}

/** The five ways in which a lab begins. */
export function Doors({ onDemo, onList, onBackup, busy }: DoorsProps) {
  return (
    <ol className="ways">
      <Door picture={<FullBox />} name={BEGIN.demo} why={BEGIN.demoWhy}>
        <Button look="main" aria-disabled={busy} onClick={() => !busy && onDemo()}>
          {BEGIN.demoDo}
        </Button>
      </Door>
      <ListDoor name={BEGIN.list} why={BEGIN.listWhy} onList={onList} busy={busy} />
      <Door picture={<BoxBegun />} name={BEGIN.walk} why={BEGIN.walkWhy}>
        <Link className="btn" to="/receive" search={{ box: 'A' }}>
          {BEGIN.walkDo}
        </Link>
      </Door>
      <Door picture={<Stack />} name={BEGIN.backup} why={BEGIN.backupWhy}>
        <DropFile
          label={BEGIN.backupZone}
          lead={BEGIN.drop}
          choose={BEGIN.backupChoose}
          accept={BACKUPS}
          onFile={onBackup}
          busy={busy}
        />
      </Door>
      <Door picture={<FirstBag />} name={BEGIN.empty} why={BEGIN.emptyWhy}>
        <Link className="btn" to="/">
          {BEGIN.emptyDo}
        </Link>
      </Door>
    </ol>
  );
}

interface ListDoorProps {
  readonly name: string;
  readonly why: string;
  readonly onList: (file: File) => void;
  readonly busy: boolean;
}

export function ListDoor({ name, why, onList, busy }: ListDoorProps) {
  return (
    <Door picture={<Sheet />} name={name} why={why}>
      <DropFile label={BEGIN.listZone} lead={BEGIN.drop} choose={BEGIN.choose} accept={TABLES} onFile={onList} busy={busy} />
    </Door>
  );
}
