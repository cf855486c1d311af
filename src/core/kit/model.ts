/** A linear or mixed-integer model as data: what `solver/` takes and what tests can check by hand. */
export interface Model {
  readonly sense: 'min' | 'max';
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export interface Column {
  readonly name: string;
  readonly cost: number;
  readonly low: number;
  /** `Infinity` where open */
  readonly high: number;
  readonly whole: boolean;
}

/** low ≤ Σ coefficient × column ≤ high */
export interface Row {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly terms: readonly (readonly [column: number, coefficient: number])[];
}

/** `gap` is relative; `stopped` is the first limit that was met. */
export interface Solution {
  readonly proof: 'optimal' | 'gap' | 'infeasible' | 'unbounded';
  readonly objective: number;
  readonly bound: number;
  readonly gap: number;
  readonly values: readonly number[];
}
