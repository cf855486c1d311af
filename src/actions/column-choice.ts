import { COLUMN_ROLES, parseColumnChoice, type ColumnRole } from '#core/bom/columns.ts';

interface ColumnChoice {
  /** null where a role is not known */
  readonly choice: ReadonlyMap<string, ColumnRole> | null;
  readonly roles: readonly ColumnRole[];
}

/** What a person says that columns mean: `2=value, Pos=refs`; with the roles that there are. */
export function readColumnChoice(text: string): ColumnChoice {
  return { choice: parseColumnChoice(text), roles: COLUMN_ROLES };
}
