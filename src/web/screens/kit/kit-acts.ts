import { useRef, useState } from 'react';
import type { Warned } from '#api/acts.ts';
import { useAct } from '../../lab/act.ts';
import { queries } from '../../lab/answers.ts';
import type { Trouble } from '../../lab/ask.ts';
import type { StopPick } from './walk.ts';

interface Answer {
  readonly id: string;
  readonly warnings: readonly Warned[];
}
interface PicksBody {
  readonly picks: readonly StopPick[];
  readonly inHand?: boolean;
}
interface Return {
  readonly take: string;
  readonly quantity: number;
}

/** The latest act of this page, which can be undone here. */
export interface LatestAct {
  readonly act: string;
  readonly says: string;
  readonly warnings: readonly Warned[];
  readonly undone: boolean;
}

/** Where the page goes once a pick is booked: at once, from the hand, or at a second try. */
export type Onward = () => Promise<void>;

/** What the answer means for the page; a second try of the same act means the same. */
interface Meaning {
  readonly says: string;
  readonly undone: boolean;
  readonly picks: readonly StopPick[];
  readonly onward: Onward | null;
}

export interface KitActs {
  readonly pick: (says: string, picks: readonly StopPick[], onward: Onward) => Promise<boolean>;
  /** the pick that was just refused, from the hand */
  readonly inHand: () => Promise<boolean>;
  readonly reserve: (says: string, anyway: boolean) => Promise<boolean>;
  readonly finish: (says: (made: number) => string, made: number) => Promise<boolean>;
  readonly cancel: (says: string) => Promise<boolean>;
  readonly leftovers: (says: string, returns: readonly Return[]) => Promise<boolean>;
  readonly undo: (act: string, says: string) => Promise<boolean>;
  readonly again: () => Promise<boolean>;
  /** another stop is shown: what was said of the last one goes */
  readonly forget: () => void;
  readonly latest: LatestAct | null;
  /** acts of this page: what else is picked, another picked */
  readonly mine: ReadonlySet<string>;
  readonly busy: boolean;
  readonly trouble: Trouble | null;
}

/** What can be done with a kit. Busy until the page knows what came of it, so that no stop is pressed twice. */
export function useKitActs(build: string): KitActs {
  const path = `/api/kits/${encodeURIComponent(build)}`;
  const picks = useAct<PicksBody, Answer>(`${path}/picks`);
  const reserve = useAct<{ readonly anyway?: boolean }, Answer>(`${path}/reserve`);
  const finish = useAct<{ readonly made: number }, Answer>(`${path}/finish`);
  const cancel = useAct<object, Answer>(`${path}/cancel`);
  const leftovers = useAct<{ readonly returns: readonly Return[] }, Answer>(`${path}/leftovers`);
  const undo = useAct<{ readonly act: string }, Answer>('/api/undo');
  const acts = [picks, reserve, finish, cancel, leftovers, undo];
  const failed = acts.find(({ trouble }) => trouble !== null);
  const [latest, setLatest] = useState<LatestAct | null>(null);
  const [mine, setMine] = useState<ReadonlySet<string>>(new Set());
  const [settling, setSettling] = useState(false);
  const meaning = useRef<Meaning>({ says: '', undone: false, picks: [], onward: null });
  const settle = async (doing: Promise<Answer | null>): Promise<boolean> => {
    setSettling(true);
    try {
      const answer = await doing;
      await queries.invalidateQueries({ queryKey: ['lab', path] }, { cancelRefetch: false });
      if (!answer) return false;
      const { says, undone, onward } = meaning.current;
      setMine((known) => new Set([...known, answer.id]));
      setLatest({ act: answer.id, says, warnings: answer.warnings, undone });
      await onward?.();
      return true;
    } finally {
      setSettling(false);
    }
  };
  const book = (what: { readonly says: string } & Partial<Meaning>, run: () => Promise<Answer | null>): Promise<boolean> => {
    if (settling) return Promise.resolve(false);
    for (const act of acts) act.forget();
    meaning.current = { undone: false, picks: [], onward: null, ...what };
    return settle(run());
  };
  return {
    pick: (says, wanted, onward) => book({ says, picks: wanted, onward }, () => picks.run({ picks: wanted })),
    inHand: () => {
      const { says, picks: wanted, onward } = meaning.current;
      return book({ says, picks: wanted, onward }, () => picks.run({ picks: wanted, inHand: true }));
    },
    reserve: (says, anyway) => book({ says }, () => reserve.run(anyway ? { anyway } : {})),
    finish: (says, made) => book({ says: says(made) }, () => finish.run({ made })),
    cancel: (says) => book({ says }, () => cancel.run({})),
    leftovers: (says, returns) => book({ says }, () => leftovers.run({ returns })),
    undo: (act, says) => book({ says, undone: true }, () => undo.run({ act })),
    again: () => (failed ? settle(failed.again()) : Promise.resolve(false)),
    forget: () => {
      for (const act of acts) act.forget();
      setLatest(null);
    },
    latest,
    mine,
    busy: settling,
    trouble: failed?.trouble ?? null,
  };
}
