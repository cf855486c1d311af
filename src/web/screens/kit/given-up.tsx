import type { KitView } from '#api/kits.ts';
import { KIT } from '#say/en/kit-page.ts';
import { figures } from '#say/en/ui.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Button } from '../../ui/button.tsx';
import type { KitActs } from './kit-acts.ts';
import { lastAct } from './walk.ts';

interface GivenUpProps {
  readonly kit: KitView;
  readonly acts: KitActs;
}

/** A kit that was given up has no walk and no tray any more: only what it had, and what of it went back. */
export function GivenUp({ kit: { takes, acts: told }, acts }: GivenUpProps) {
  const last = lastAct(told, 'cancelled');
  const { givenUpColumns: columns } = KIT;
  return (
    <>
      {last && last.act !== acts.latest?.act && (
        <p>
          <Button disabled={acts.busy} onClick={() => void acts.undo(last.act, KIT.goesOn)}>
            {KIT.undoGivenUp}
          </Button>
        </p>
      )}
      {takes.length > 0 && (
        <section className="col gone">
          <h2>{KIT.givenUp}</h2>
          <table className="ledger tight route">
            <caption className="vh">{KIT.givenUp}</caption>
            <thead>
              <tr>
                <th scope="col">{columns.bag}</th>
                <th scope="col">{columns.part}</th>
                <th scope="col" className="n">
                  {columns.picked}
                </th>
                <th scope="col" className="n">
                  {columns.back}
                </th>
              </tr>
            </thead>
            <tbody>
              {takes.map((take) => (
                <tr key={take.id}>
                  <td className="t">
                    <BagLink bag={take.bag} />
                  </td>
                  <td className="part">
                    {take.said.name} <small>{take.said.rest}</small>
                  </td>
                  <td className="n">{figures(take.picked)}</td>
                  <td className="n">{figures(take.returned)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </>
  );
}
