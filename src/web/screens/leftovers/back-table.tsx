import { useState } from 'react';
import { writeRefs } from '#core/bom/write-refs.ts';
import { LEFTOVERS } from '#say/en/leftovers-page.ts';
import { figures } from '#say/en/ui.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Ring } from '../../ui/ring.tsx';
import { sumOf, SumField } from '../../ui/sum-field.tsx';
import type { Back } from './leftovers.ts';

interface BackTableProps {
  readonly backs: readonly Back[];
  readonly onType: (take: string, text: string) => void;
}

/** What comes back, cell by cell; cells from which nothing is expected stand folded below. */
export function BackTable({ backs, onType }: BackTableProps) {
  // a cell stays where it stood when the page opened: nothing jumps away while it is typed at
  const [first] = useState(() => new Set(backs.filter(expects).map(({ take }) => take.id)));
  const likely = backs.filter((back) => first.has(back.take.id) || expects(back));
  const rest = backs.filter((back) => !likely.includes(back));
  return (
    <>
      {likely.length > 0 && <Table backs={likely} onType={onType} />}
      {rest.length > 0 && (
        <details className="others">
          <summary>{LEFTOVERS.others(rest.length)}</summary>
          <Table backs={rest} onType={onType} />
        </details>
      )}
    </>
  );
}

const expects = ({ take, text }: Back): boolean => take.expected > 0 || text !== String(take.expected);

function Table({ backs, onType }: BackTableProps) {
  const { columns } = LEFTOVERS;
  return (
    <div className="col">
      <table className="ledger fold backs">
        <caption className="vh">{LEFTOVERS.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.cell}</th>
            <th scope="col">{columns.refs}</th>
            <th scope="col">{columns.what}</th>
            <th scope="col">{columns.bag}</th>
            <th scope="col" className="n">
              {columns.came}
            </th>
            <th scope="col">{columns.back}</th>
          </tr>
        </thead>
        <tbody>
          {backs.map((back) => (
            <BackRow key={back.take.id} back={back} onType={onType} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function BackRow({ back: { take, text, out }, onType }: { readonly back: Back; readonly onType: BackTableProps['onType'] }) {
  const read = sumOf(text);
  const wrong = text.trim() === '' ? LEFTOVERS.missing : read !== null && read > out ? LEFTOVERS.most(out) : null;
  return (
    <tr>
      <td data-as="idx">
        <Ring cell={take.cell} />
      </td>
      <td className="main refs" data-as="main">
        {writeRefs(take.refs)}
      </td>
      <td data-as="sub" className="part">
        <b>{take.said.name}</b> <span className="two">{take.said.rest}</span>
      </td>
      <td data-as="box">
        <BagLink bag={take.bag} />
      </td>
      <td className="n" data-as="need" data-l={LEFTOVERS.columns.came}>
        {figures(out)}
      </td>
      <td className="back" data-as="folded">
        <SumField
          label={LEFTOVERS.field(take.cell, take.bag)}
          value={text}
          onChange={(wanted) => onType(take.id, wanted)}
          wrong={wrong}
        />
      </td>
    </tr>
  );
}
