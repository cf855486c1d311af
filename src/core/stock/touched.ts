interface Touch {
  readonly bags: readonly number[];
  /** bags that the act does not name, since there are many */
  readonly more: number;
}

/** The bags that acts touched, the newest act first; an act on many bags at once stands back behind those on few. */
export function touchedLast(acts: readonly Touch[]): number[] {
  // more bags than an act names are a list, a kit or the like: it says little of what lies on the bench
  const few = acts.filter(({ more }) => more === 0);
  const many = acts.filter(({ more }) => more > 0);
  return [...new Set([...few, ...many].flatMap((act) => act.bags))];
}
