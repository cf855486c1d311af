import type { Point } from '#api/boards.ts';
import { BOARD_LINE } from '#say/en/board-line.ts';
import { Fit } from '../../ui/fit.tsx';

interface PointTableProps {
  readonly row: number;
  readonly bag: number;
  readonly points: readonly Point[];
}

/** What the line asks and what the bag is, point by point. */
export function PointTable({ row, bag, points }: PointTableProps) {
  const { points: heads } = BOARD_LINE;
  return (
    <table className="ledger tight cmp">
      <caption className="vh">{BOARD_LINE.caption(row, bag)}</caption>
      <thead>
        <tr>
          <th scope="col">{heads.point}</th>
          <th scope="col">{heads.asks}</th>
          <th scope="col">{BOARD_LINE.bag(bag)}</th>
          <th scope="col">{heads.verdict}</th>
        </tr>
      </thead>
      <tbody>
        {points.map(({ point, asked, has, fit, word }) => (
          <tr key={point}>
            <td className="two">{point}</td>
            <Given text={asked} />
            <Given text={has} />
            <td>
              <Fit fit={fit}>{word}</Fit>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Given({ text }: { readonly text: string | null }) {
  return text === null ? <td className="two">{BOARD_LINE.notGiven}</td> : <td className="long">{text}</td>;
}
