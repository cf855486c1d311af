import { useNavigate } from '@tanstack/react-router';
import { BOARD_PAGE } from '#say/en/board-page.ts';
import { useAct, type Act } from '../../lab/act.ts';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';
import { Step } from '../../ui/step.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { MOST_BOARDS } from './place.ts';

interface KitBody {
  readonly board: string;
  readonly revision: string;
  readonly boards: number;
  readonly spares: boolean;
  readonly reserve?: boolean;
  readonly keep?: boolean;
  readonly anyway?: boolean;
}

export interface KitPlanning {
  /** a kit for so many, its bags reserved */
  readonly plan: (boards: number) => void;
  /** the same, though not one board comes of it */
  readonly anyway: (boards: number) => void;
  readonly keep: (boards: number) => void;
  readonly act: Act<KitBody, { readonly build: string }>;
  readonly again: () => void;
}

/** Makes a kit of the board and goes to it. */
export function useKitPlanning(board: string, revision: string | null): KitPlanning {
  const act = useAct<KitBody, { readonly build: string }>('/api/kits');
  const navigate = useNavigate();
  const open = async (asked: Promise<{ readonly build: string } | null>): Promise<void> => {
    const kit = await asked;
    if (kit) await navigate({ to: '/kits/$build', params: { build: kit.build } });
  };
  const run = (boards: number, how: Pick<KitBody, 'reserve' | 'keep' | 'anyway'>): void => {
    if (revision === null || act.busy) return;
    act.forget();
    void open(act.run({ board, revision, boards, spares: true, ...how }));
  };
  return {
    plan: (boards) => run(boards, { reserve: true }),
    anyway: (boards) => run(boards, { reserve: true, anyway: true }),
    keep: (boards) => run(boards, { keep: true }),
    act,
    again: () => void open(act.again()),
  };
}

interface PlanKitProps {
  readonly planning: KitPlanning;
  readonly boards: number;
  readonly buildable: number;
  readonly ready: boolean;
  /** id of the sentence that says what the waiting button waits for */
  readonly waitsFor: string;
  readonly onBoards: (boards: number) => void;
}

export function PlanKit({ planning, boards, buildable, ready, waitsFor, onBoards }: PlanKitProps) {
  const can = ready && buildable > 0 && !planning.act.busy;
  return (
    <>
      <Step label={BOARD_PAGE.boardsToBuild} value={boards} most={MOST_BOARDS} onChange={onBoards} />
      <Button
        look="main"
        keyHint="K"
        disabled={!can}
        aria-describedby={ready && buildable === 0 ? waitsFor : undefined}
        onClick={() => planning.plan(buildable)}
      >
        {BOARD_PAGE.planKit(buildable)}
      </Button>
      <Button disabled={!ready || planning.act.busy} onClick={() => planning.keep(boards)}>
        {BOARD_PAGE.keepAsPlanned(boards)}
      </Button>
    </>
  );
}

/** Why there is no kit, and the way on. */
export function PlanTrouble({ planning, boards }: { readonly planning: KitPlanning; readonly boards: number }) {
  const { trouble } = planning.act;
  if (trouble?.kind !== 'refused') return <TroubleNote trouble={trouble} again={planning.again} />;
  const { code, detail } = trouble.problem;
  if (code === 'nothing-made')
    return (
      <Note
        kind="check"
        title={BOARD_PAGE.nothingMade(boards)}
        actions={<Button onClick={() => planning.anyway(boards)}>{BOARD_PAGE.reserveAnyway}</Button>}
      >
        {BOARD_PAGE.nothingMadeWay}
      </Note>
    );
  if (code === 'plan-stale')
    return (
      <Note kind="check" title={detail} actions={<Button onClick={() => planning.plan(boards)}>{BOARD_PAGE.planAgain}</Button>} />
    );
  return <TroubleNote trouble={trouble} again={planning.again} />;
}
