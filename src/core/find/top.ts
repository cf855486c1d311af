import type { Columns } from './columns.ts';

export interface Ranked {
  readonly slot: number;
  readonly rank: number;
}

/** The best of many slots by rank, then by bag number, best first, kept as they come without sorting the many. */
export class Top {
  readonly #most: number;
  readonly #number: Columns['number'];
  readonly #kept: Ranked[] = [];
  #least = -1;

  constructor(most: number, number: Columns['number']) {
    this.#most = most;
    this.#number = number;
  }

  offer(slot: number, rank: number): void {
    if (rank < this.#least || this.#most < 1) return;
    const last = this.#kept[this.#most - 1];
    if (last && !this.#before(slot, rank, last)) return;
    this.#kept.splice(this.#placeOf(slot, rank), 0, { slot, rank });
    if (this.#kept.length > this.#most) this.#kept.pop();
    this.#least = this.#kept[this.#most - 1]?.rank ?? -1;
  }

  /** Best first. */
  get kept(): readonly Ranked[] {
    return this.#kept;
  }

  #before(slot: number, rank: number, other: Ranked): boolean {
    return rank === other.rank ? (this.#number[slot] ?? 0) < (this.#number[other.slot] ?? 0) : rank > other.rank;
  }

  #placeOf(slot: number, rank: number): number {
    let low = 0;
    let high = this.#kept.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      const at = this.#kept[middle];
      if (at && !this.#before(slot, rank, at)) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
