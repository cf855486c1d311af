import { Tag } from '../../ui/tag.tsx';
import type { FoundBag } from '#api/bags.ts';
import { railMark } from '#core/stock/rail.ts';
import { FIND_PAGE } from '#say/en/find-page.ts';
import { groupsOf } from './find.ts';

/** The found bags as the one table of the house; it folds on a phone. */
export function FoundTable({ found, words }: { readonly found: readonly FoundBag[]; readonly words: string }) {
  if (found.length === 0) return null;
  const { columns } = FIND_PAGE;
  return (
    <div className="col">
      <table className="ledger fold">
        <caption className="vh">{FIND_PAGE.caption(words)}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.bag}</th>
            <th scope="col">{columns.what}</th>
            <th scope="col">{columns.why}</th>
            <th scope="col">{columns.code}</th>
            <th scope="col">{columns.box}</th>
            <th scope="col" className="n">
              {columns.onHand}
            </th>
            <th scope="col" className="n">
              {columns.free}
            </th>
          </tr>
        </thead>
        {groupsOf(found).map((group) => (
          <tbody key={group.name}>
            <tr className="group">
              <th scope="rowgroup" colSpan={7}>
                {group.name}
              </th>
            </tr>
            {group.bags.map((bag) => (
              <FoundRow key={bag.bag} bag={bag} />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}

function FoundRow({ bag }: { readonly bag: FoundBag }) {
  return (
    <tr>
      <td className="t" data-as="tag">
        <span className="vh">{FIND_PAGE.bag}</span>
        <Tag number={bag.bag} at={railMark(bag.bag)} gone={bag.onHand === 0} />
      </td>
      <td className="main" data-as="main">
        {bag.text}
      </td>
      <td data-as="sub">{bag.why.join(', ')}</td>
      <td className="two" data-as="code" data-fold="no">
        <span className="code">{bag.code}</span>
      </td>
      <td data-as="box">{bag.box ?? ''}</td>
      <td className="n main" data-as="n">
        {bag.onHand}
      </td>
      <td className="n" data-as="free" data-l={FIND_PAGE.free}>
        {bag.free}
      </td>
    </tr>
  );
}
