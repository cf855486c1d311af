import { useSearch } from '@tanstack/react-router';
import { measureElement, useWindowVirtualizer, type Virtualizer } from '@tanstack/react-virtual';
import { useCallback, useEffect, useState, type ReactNode } from 'react';
import { BOARD_PAGE } from '#say/en/board-page.ts';
import { writeWords } from '../../address.ts';
import { usePrinting } from '../../ui/narrow.ts';
import type { TableRow } from './board.ts';
import { LineRow } from './line-row.tsx';
import { changed, toRow } from './place.ts';

/** From here on only what is on the screen is in the page. */
const MANY = 80;
const ROW_PX = 52;
const HEAD_PX = 56;
const BEYOND = 8;

interface LedgerProps {
  readonly rows: readonly TableRow[];
  readonly row: number | null;
}

export function LineLedger({ rows, row }: LedgerProps) {
  const printing = usePrinting();
  return rows.length > MANY && !printing ? <ManyLines rows={rows} row={row} /> : <AllLines rows={rows} row={row} />;
}

function AllLines({ rows, row }: LedgerProps) {
  const hrefOf = useLineHref();
  return (
    <Table>
      <tbody>
        {rows.map((one, at) =>
          one.line ? (
            <LineRow key={one.key} line={one.line} on={one.line.row === row} href={hrefOf(one.line.row)} index={at} whole />
          ) : (
            <GroupHead key={one.key} head={one.head} />
          ),
        )}
      </tbody>
    </Table>
  );
}

/** The address of the board with a line chosen. */
function useLineHref(): (row: number) => string {
  const words = useSearch({ from: '/boards/$board' });
  return (row) => writeWords({ ...changed(words, toRow(row)) });
}

/** A row that comes is as high as rows are until the browser has drawn it: asking it would draw the page once more for each. */
function sizeOf(row: Element, entry: ResizeObserverEntry | undefined, list: Virtualizer<Window, Element>): number {
  if (entry) return measureElement(row, entry, list);
  const index = list.indexFromElement(row);
  return list.itemSizeCache.get(list.options.getItemKey(index)) ?? list.options.estimateSize(index);
}

/** Rows of a long board as the window passes them; what is above and below is room of the same height. */
function ManyLines({ rows, row }: LedgerProps) {
  const hrefOf = useLineHref();
  const [top, setTop] = useState(0);
  const place = useCallback((body: HTMLElement | null) => {
    if (!body) return undefined;
    const measure = (): void => setTop(Math.round(body.getBoundingClientRect().top + scrollY));
    // a note that comes or goes above moves the rows, and the page grows or shrinks with it
    const watch = new ResizeObserver(measure);
    watch.observe(document.body);
    return () => watch.disconnect();
  }, []);
  // oxlint-disable-next-line react/incompatible-library -- nothing here is memoized by what the virtualizer answers
  const virtual = useWindowVirtualizer({
    count: rows.length,
    estimateSize: (at) => (rows[at]?.line ? ROW_PX : HEAD_PX),
    getItemKey: (at) => rows[at]?.key ?? at,
    overscan: BEYOND,
    scrollMargin: top,
    measureElement: sizeOf,
  });
  const chosen = row === null ? -1 : rows.findIndex(({ line }) => line?.row === row);
  useEffect(() => {
    if (chosen >= 0) virtual.scrollToIndex(chosen, { align: 'auto' });
  }, [chosen, virtual]);
  const items = virtual.getVirtualItems();
  const [first, last] = [items[0], items.at(-1)];
  const above = first ? first.start - top : 0;
  const below = last ? virtual.getTotalSize() - (last.end - top) : 0;
  return (
    <Table count={rows.length + 1}>
      <tbody ref={place}>
        <Room height={above} />
        {items.map(({ index }) => {
          const one = rows[index];
          if (!one) return null;
          return one.line ? (
            <LineRow
              key={one.key}
              line={one.line}
              on={one.line.row === row}
              href={hrefOf(one.line.row)}
              index={index}
              whole={false}
              measure={virtual.measureElement}
            />
          ) : (
            <GroupHead key={one.key} head={one.head} index={index} measure={virtual.measureElement} />
          );
        })}
        <Room height={below} />
      </tbody>
    </Table>
  );
}

function Room({ height }: { readonly height: number }) {
  if (height <= 0) return null;
  return (
    <tr aria-hidden="true" className="room">
      <td colSpan={9} style={{ blockSize: height }} />
    </tr>
  );
}

interface GroupHeadProps {
  readonly head: Exclude<TableRow['head'], null>;
  readonly index?: number;
  readonly measure?: (row: Element | null) => void;
}

function GroupHead({ head, index, measure }: GroupHeadProps) {
  return (
    <tr ref={measure} data-index={index} aria-rowindex={index === undefined ? undefined : index + 2}>
      <th scope="rowgroup" colSpan={9}>
        {BOARD_PAGE.groups[head]} <small>{BOARD_PAGE.groupsWhy[head]}</small>
      </th>
    </tr>
  );
}

/** The head of the table; `count` of rows where not all of them are in the page. */
function Table({ count, children }: { readonly count?: number; readonly children: ReactNode }) {
  const { columns } = BOARD_PAGE;
  return (
    <table className="ledger fold lines" aria-rowcount={count}>
      <caption className="vh">{BOARD_PAGE.caption}</caption>
      <colgroup>
        <col className="c-line" />
        <col className="c-refs" />
        <col className="c-asks" />
        <col className="c-match" />
        <col className="c-bag" />
        <col className="c-holds" />
        <col className="c-need" />
        <col className="c-free" />
        <col className="c-left" />
      </colgroup>
      <thead>
        <tr aria-rowindex={count === undefined ? undefined : 1}>
          <th scope="col" className="n">
            {columns.line}
          </th>
          <th scope="col">{columns.refs}</th>
          <th scope="col">{columns.asks}</th>
          <th scope="col">{columns.match}</th>
          <th scope="col">{columns.bag}</th>
          <th scope="col">{columns.holds}</th>
          <th scope="col" className="n">
            {columns.need}
          </th>
          <th scope="col" className="n">
            {columns.free}
          </th>
          <th scope="col" className="n">
            {columns.left}
          </th>
        </tr>
      </thead>
      {children}
    </table>
  );
}
