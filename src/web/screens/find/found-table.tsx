import { Tag } from '../../ui/tag.tsx';
import { groupsOf, markOf, type FoundBag } from './find.ts';

/** The found bags as the one table of the house; it folds on a phone. */
export function FoundTable({ found, words }: { readonly found: readonly FoundBag[]; readonly words: string }) {
  if (found.length === 0) return null;
  return (
    <div className="col">
      <table className="ledger fold">
        <caption className="vh">Bags that answer to {words}</caption>
        <thead>
          <tr>
            <th scope="col">Bag</th>
            <th scope="col">What it is</th>
            <th scope="col">Why</th>
            <th scope="col">Part code</th>
            <th scope="col">Box</th>
            <th scope="col" className="n">
              On hand
            </th>
            <th scope="col" className="n">
              Free
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
        <span className="vh">bag </span>
        <Tag number={bag.bag} at={markOf(bag.bag)} gone={bag.onHand === 0} />
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
      <td className="n" data-as="free" data-l="free">
        {bag.free}
      </td>
    </tr>
  );
}
