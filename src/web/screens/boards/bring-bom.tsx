import { BOARDS_PAGE } from '#say/en/boards-page.ts';
import { TABLES } from '../../lab/bring-file.ts';
import type { Bringing } from '../../lab/bring.ts';
import { Button } from '../../ui/button.tsx';
import { DropFile } from '../../ui/drop-file.tsx';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';

interface BringBomProps {
  readonly bringing: Bringing;
  /** a file is held over the page */
  readonly over: boolean;
}

/** Has a BOM read and goes to what was read. */
export function BringBom({ bringing: { bring, reading }, over }: BringBomProps) {
  return (
    <DropFile
      label={BOARDS_PAGE.bringZone}
      lead={reading === null ? (over ? BOARDS_PAGE.dropHere : BOARDS_PAGE.bringLead) : BOARDS_PAGE.bringing(reading)}
      choose={BOARDS_PAGE.bring}
      accept={TABLES}
      onFile={bring}
      main
      busy={reading !== null}
    />
  );
}

/** Why a file could not be read, as the lab says it. */
export function BringTrouble({ bringing }: { readonly bringing: Bringing }) {
  const { trouble } = bringing;
  if (trouble?.kind !== 'refused') return <TroubleNote trouble={trouble} again={bringing.again} />;
  return (
    <Note kind="stop" title={trouble.problem.detail} actions={<Button onClick={bringing.again}>{BOARDS_PAGE.again}</Button>} />
  );
}
