import type { CSSProperties, ReactNode } from 'react';
import { railMark } from '#core/stock/rail.ts';
import { UI } from '#say/en/ui.ts';

export type TagSize = 'sm' | 'normal' | 'big' | 'huge';

interface TagProps {
  readonly bag: number;
  readonly gone?: boolean;
  readonly size?: TagSize;
}

const style = (mark: number): CSSProperties => ({ '--at': mark }) as CSSProperties; // as: React's type knows no custom properties

/** A long number wants more room in a folded row. */
const long = (bag: number | undefined): string | false =>
  bag === undefined || bag < 1000 ? false : bag < 10_000 ? 'four' : 'five';

/** Class names of the drawn tag, for a link that is one. */
export function tagClass({ bag, gone = false, size = 'normal' }: Partial<TagProps>): string {
  return ['tag', gone && 'gone', size !== 'normal' && size, long(bag)].filter(Boolean).join(' ');
}

/** A bag number as its drawn tag; the mark on its rail is its place among the steps of the rail. */
export function Tag({ bag, gone = false, size = 'normal' }: TagProps) {
  return (
    <span className={tagClass({ bag, gone, size })} style={style(railMark(bag))}>
      <TagWords bag={bag} />
    </span>
  );
}

/** What stands in a tag; read aloud as "bag 114". */
export function TagWords({ bag }: { readonly bag: number }): ReactNode {
  return (
    <>
      <span className="vh">{UI.bag}</span>
      {bag}
    </>
  );
}

/** The style of a link that is a tag. */
export const tagStyle = (bag: number): CSSProperties => style(railMark(bag));

/** The mark of the house: a tag that is no bag. */
export function HomeTag() {
  return (
    <span className="tag" style={style(0.17)} aria-hidden="true">
      b
    </span>
  );
}
