import type { Imported } from '#api/files.ts';
import { DRAFT, sayMadeBag, sayMoreMade } from '#say/en/draft-page.ts';
import { BagLink } from '../../ui/bag-link.tsx';

/** What to write on which bag, each a link; those with doubts first. */
export function MadeBags({ made: { made, bags } }: { readonly made: Imported }) {
  const more = bags - made.length;
  return (
    <section className="col made">
      <h2>{DRAFT.madeTitle}</h2>
      <table className="ledger fold">
        <caption className="vh">{DRAFT.madeTitle}</caption>
        <thead>
          <tr>
            <th scope="col">{DRAFT.madeBag}</th>
            <th scope="col">{DRAFT.madeWhat}</th>
            <th scope="col">{DRAFT.box}</th>
            <th scope="col">{DRAFT.madeWhy}</th>
          </tr>
        </thead>
        <tbody>
          {made.map((one) => (
            <tr key={one.bag}>
              <td className="t" data-as="tag">
                <BagLink bag={one.bag} />
              </td>
              <td className="main" data-as="main">
                {one.name}
              </td>
              <td className="t" data-as="sub" data-l={DRAFT.box}>
                {one.box ?? DRAFT.noBox}
                {one.place !== null && <span className="two"> {one.place}</span>}
              </td>
              <td className="t" data-as="sub">
                {sayMadeBag(one)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {more > 0 && <p className="s two">{sayMoreMade(more)}</p>}
    </section>
  );
}
