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

/** Words that go in one message. */
interface Message {
  change: DraftChange;
  told: boolean;
}

/**
 * Tells a draft what a person says, one message at a time and in their order. What could not be told is held and goes with
 * the next try; what the lab refuses is not told again, and the words after it go on.
 */
export class Telling {
  readonly #send: (change: DraftChange) => Promise<void>;
  #held: Message | null = null;
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
  async tell(change: DraftChange): Promise<boolean> {
    const message = (this.#held ??= { change: {}, told: false });
    message.change = mergeChanges(message.change, change);
    this.#set({ ...this.#state, held: mergeChanges(this.#state.held ?? {}, change) });
    await this.again();
    return message.told;
  }

  /** All that is held, until nothing is or the lab is away; true where all of it is in the draft. */
  again(): Promise<boolean> {
    this.#run ??= this.#flush().finally(() => {
      this.#run = null;
    });
    return this.#run;
  }

  async #flush(): Promise<boolean> {
    let refused: Trouble | null = null;
    while (this.#held) {
      const going: Message = this.#held;
      this.#held = null;
      this.#set({ sending: true, held: going.change, trouble: refused });
      try {
        await this.#send(going.change);
        going.told = true;
      } catch (error) {
        const trouble = error instanceof Unanswered ? error.trouble : null;
        if (trouble?.kind === 'refused') {
          refused = trouble;
          continue;
        }
        this.#hold(going);
        this.#set({ sending: false, held: going.change, trouble });
        if (!trouble) throw error;
        return false;
      }
    }
    this.#set({ sending: false, held: null, trouble: refused });
    return refused === null;
  }

  /** It goes with the next try, before what was said since. */
  #hold(going: Message): void {
    if (this.#held) going.change = mergeChanges(going.change, this.#held.change);
    this.#held = going;
  }

  #set(state: State): void {
    this.#state = state;
    for (const told of this.#told) told();
  }
}
