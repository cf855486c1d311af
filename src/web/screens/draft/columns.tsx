import type { DraftColumn, DraftView } from '#api/drafts.ts';
import { DRAFT } from '#say/en/draft-page.ts';
import { Fit, type Fits } from '../../ui/fit.tsx';
import { Select } from '../../ui/select.tsx';
import { linesOf, sampleRows } from './draft.ts';

const FIT: Readonly<Record<DraftColumn['sure'], Fits>> = {
  sure: 'exact',
  likely: 'serves',
  check: 'check',
  told: 'exact',
  kept: 'none',
};

interface ColumnsProps {
  readonly draft: DraftView;
  readonly onRole: (column: number, role: string) => void;
}

/** The head of the file as it stands, and over each column what it was taken for. */
export function Columns({ draft, onRole }: ColumnsProps) {
  const lines = sampleRows(draft).map((cells, at) => ({ key: `${at + 1}`, cells }));
  const others = linesOf(draft) - lines.length;
  return (
    <section className="stack columns">
      <div className="headed">
        <h2>{DRAFT.columns}</h2>
        <span className="s two">{DRAFT.columnsHelp}</span>
      </div>
      <div className="scroll" tabIndex={0} role="region" aria-label={DRAFT.fileLabel}>
        <table className="ledger rawt">
          <caption className="vh">{DRAFT.fileCaption}</caption>
          <thead>
            <tr>
              {draft.columns.map((column) => (
                <ColumnHead key={column.column} column={column} roles={draft.roles} onRole={onRole} />
              ))}
            </tr>
          </thead>
          <tbody>
            {lines.map(({ key, cells }) => (
              <tr key={key}>
                {draft.columns.map(({ column, sure }, at) => (
                  <td key={column} className={sure === 'check' ? 'ask' : undefined}>
                    {cells[at] || <span className="three">·</span>}
                  </td>
                ))}
              </tr>
            ))}
            {others > 0 && (
              <tr>
                <td colSpan={draft.columns.length} className="three">
                  {DRAFT.moreLines(others)}
                </td>
              </tr>
            )}
          </tbody>
        </table>
      </div>
    </section>
  );
}

interface HeadProps {
  readonly column: DraftColumn;
  readonly roles: DraftView['roles'];
  readonly onRole: (column: number, role: string) => void;
}

function ColumnHead({ column: { column, header, role, sure, evidence }, roles, onRole }: HeadProps) {
  return (
    <th scope="col" className={sure === 'check' ? 'ask' : undefined}>
      <div className="hd">
        <span className="apart">
          <b>{header || DRAFT.columnNameless(column)}</b>
          <Fit fit={FIT[sure]}>{DRAFT.sure[sure]}</Fit>
        </span>
        <Select
          label={DRAFT.columnHolds(column, header)}
          hideLabel
          value={role}
          options={roles.map(({ role, word }) => ({ value: role, says: word }))}
          onChange={(wanted) => onRole(column, wanted)}
        />
        <small>{evidence}</small>
      </div>
    </th>
  );
}
