import type { BoxesView } from '#api/bags.ts';
import { BOXES_PAGE } from '#say/en/boxes-page.ts';
import { BagLink } from '../../ui/bag-link.tsx';

/** Bags that stand in no box, with the place that somebody wrote down. */
export function LooseBags({ loose }: { readonly loose: BoxesView['loose'] }) {
  return (
    <section className="loose">
      <div className="headed">
        <h2>{BOXES_PAGE.loose}</h2>
        <span className="s two">{BOXES_PAGE.looseWhy}</span>
      </div>
      <ul>
        {loose.map(({ bag, place, standing }) => (
          <li key={bag}>
            <BagLink bag={bag} gone={standing === 'exhausted'} />
            <span className="two s">{place ?? BOXES_PAGE.noPlace}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
