import type { DraftChange } from '#api/drafts.ts';
import { Unanswered, type Trouble } from '../../lab/ask.ts';

interface State {
  readonly sending: boolean;
  /** what was said and is not in the draft yet */
  readonly held: DraftChange | null;
  readonly trouble: Trouble | null;
}

const of = ({ row, field }: { readonly row: number; readonly field: string }): string => `${row} ${field}`;

/** Two changes as one; of the same thing the later word holds. */
export function mergeChanges(first: DraftChange, then: DraftChange): DraftChange {
  const forgotten = new Set((then.forget ?? []).map(of));
  const answered = new Set((then.answers ?? []).map(of));
  const outs = new Set((then.out ?? []).map(({ row }) => row));
  const answers = [
    ...(first.answers ?? []).filter((one) => !answered.has(of(one)) && !forgotten.has(of(one))),
    ...(then.answers ?? []),
  ];
  const forget = [
    ...(first.forget ?? []).filter((one) => !answered.has(of(one)) && !forgotten.has(of(one))),
    ...(then.forget ?? []),
  ];
  const out = [...(first.out ?? []).filter(({ row }) => !outs.has(row)), ...(then.out ?? [])];
  const columns = { ...first.columns, ...then.columns };
  const { answers: _answers, forget: _forget, out: _out, columns: _columns, ...rest } = { ...first, ...then };
  return {
    ...rest,
    ...(Object.keys(columns).length > 0 && { columns }),
    ...(answers.length > 0 && { answers }),
    ...(forget.length > 0 && { forget }),
    ...(out.length > 0 && { out }),
  };
}

/**
 * Tells a draft what a person says, one message at a time and in their order. What could not be told is held and goes with
 * the next try; what the lab refuses is not told again.
 */
export class Telling {
  readonly #send: (change: DraftChange) => Promise<void>;
  #held: DraftChange | null = null;
  #state: State = { sending: false, held: null, trouble: null };
  #told = new Set<() => void>();
  #run: Promise<boolean> | null = null;

  constructor(send: (change: DraftChange) => Promise<void>) {
    this.#send = send;
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#told.add(listener);
    return () => this.#told.delete(listener);
  };

  snapshot = (): State => this.#state;

  /** True where the draft holds it now. */
  tell(change: DraftChange): Promise<boolean> {
    this.#held = this.#held ? mergeChanges(this.#held, change) : change;
    const { held } = this.#state;
    this.#set({ ...this.#state, held: held ? mergeChanges(held, change) : change });
    return this.again();
  }

  /** All that is held, until nothing is or a try fails. */
  again(): Promise<boolean> {
    this.#run ??= this.#flush().finally(() => {
      this.#run = null;
    });
    return this.#run;
  }

  async #flush(): Promise<boolean> {
    while (this.#held) {
      const going = this.#held;
      this.#held = null;
      this.#set({ sending: true, held: going, trouble: null });
      try {
        await this.#send(going);
      } catch (error) {
        if (!(error instanceof Unanswered)) throw error;
        if (error.trouble.kind === 'away') this.#held = this.#held ? mergeChanges(going, this.#held) : going;
        this.#set({ sending: false, held: this.#held, trouble: error.trouble });
        return false;
      }
    }
    this.#set({ sending: false, held: null, trouble: null });
    return true;
  }

  #set(state: State): void {
    this.#state = state;
    for (const told of this.#told) told();
  }
}
