import { useNavigate } from '@tanstack/react-router';
import { memo } from 'react';
import type { FoundBag } from '#api/bags.ts';
import { FIND_PAGE, sayAmount } from '#say/en/find-page.ts';
import { sayDepth } from '#say/en/place-words.ts';
import { PlainLink } from '../../ui/plain-link.tsx';
import { Tag } from '../../ui/tag.tsx';
import type { Places, StandsIn } from './places.ts';
import { standsAs, whyOf, type FoundGroup } from './find.ts';

/** What a row needs to know of a bag, whether it was found or touched last. */
export type RowBag = Pick<FoundBag, 'bag' | 'box' | 'place' | 'code' | 'said' | 'unit' | 'state' | 'onHand' | 'free'>;

interface LedgerProps {
  readonly caption: string;
  readonly groups: readonly { readonly head: FoundGroup['group'] | null; readonly bags: readonly RowBag[] }[];
  readonly chosen: number | null;
  readonly places: Places;
  /** the second voice of a row */
  readonly why?: ReadonlyMap<number, string>;
}

const COLUMNS = FIND_PAGE.columns;
export const rowId = (bag: number): string => `row-${bag}`;
export const whysOf = (found: readonly FoundBag[]): ReadonlyMap<number, string> =>
  new Map(found.map((bag) => [bag.bag, whyOf(bag)]));

/** Bags, each with its name as the link to its drawer. */
export function BagLedger({ caption, groups, chosen, places, why }: LedgerProps) {
  return (
    <table className="ledger fold bags">
      <caption className="vh">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{COLUMNS.bag}</th>
          <th scope="col">{COLUMNS.value}</th>
          <th scope="col">{COLUMNS.what}</th>
          <th scope="col">{COLUMNS.code}</th>
          <th scope="col">{COLUMNS.box}</th>
          <th scope="col" className="n">
            {COLUMNS.onHand}
          </th>
          <th scope="col" className="n">
            {COLUMNS.free}
          </th>
        </tr>
      </thead>
      {groups.map(({ head, bags }) => (
        <tbody key={head ?? ''}>
          {head && <GroupHead group={head} />}
          {bags.map((bag) => (
            <BagRow
              key={bag.bag}
              bag={bag}
              on={bag.bag === chosen}
              opens={chosen === null}
              at={places(bag.bag, bag.box)}
              why={why?.get(bag.bag) ?? ''}
            />
          ))}
        </tbody>
      ))}
    </table>
  );
}

function GroupHead({ group }: { readonly group: FoundGroup['group'] }) {
  const { name, more } = FIND_PAGE.groups[group];
  return (
    <tr>
      <th scope="rowgroup" colSpan={7}>
        {name}
        {more && <small> {more}</small>}
      </th>
    </tr>
  );
}

interface RowProps {
  readonly bag: RowBag;
  readonly on: boolean;
  /** no bag is open: opening this one is a move that Back takes back */
  readonly opens: boolean;
  readonly at: StandsIn | undefined;
  readonly why: string;
}

const BagRow = memo(function BagRow({ bag, on, opens, at, why }: RowProps) {
  const navigate = useNavigate({ from: '/' });
  const gone = bag.onHand === 0;
  return (
    <tr className={[on && 'on', gone && 'off'].filter(Boolean).join(' ') || undefined} aria-current={on || undefined}>
      <td className="t" data-as="tag">
        <Tag bag={bag.bag} gone={gone} />
      </td>
      <td className="main" data-as="main">
        <PlainLink
          id={rowId(bag.bag)}
          className="pick"
          href={`/?bag=${bag.bag}`}
          onGo={() =>
            void navigate({
              to: '/',
              search: ({ words }: { readonly words?: string }) => ({ ...(words && { words }), bag: String(bag.bag) }),
              replace: !opens,
              resetScroll: false,
            })
          }
        >
          {bag.said.name}
        </PlainLink>
      </td>
      <td data-as="sub">
        {bag.said.rest}
        {why && <span className="why"> {why}</span>}
      </td>
      <td className="two" data-as="code" data-fold="no">
        <span className="code">{bag.code}</span>
      </td>
      <td data-as="box">{boxWords(bag, at)}</td>
      <td className="n main" data-as="n">
        {sayAmount(bag.onHand, bag.unit)}
      </td>
      <td className={bag.free < 0 ? 'n bad' : 'n'} data-as="free" data-l={FIND_PAGE.free}>
        {sayAmount(bag.free, bag.unit)}
      </td>
    </tr>
  );
});

/** `B, near the back`; what can't be taken says so instead of its depth. */
function boxWords(bag: RowBag, at: StandsIn | undefined): string {
  const depth = standsAs(bag) ?? (at && sayDepth(at)) ?? (bag.box === null ? bag.place : null);
  return [bag.box ?? FIND_PAGE.noBox, depth].filter(Boolean).join(', ');
}
