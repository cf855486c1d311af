import type { CSSProperties } from 'react';

/** A bag number as its drawn tag; `at` is how deep it stands in its box, 0 front to 1 back. */
export function Tag({ number, at, gone = false }: { number: number | string; at: number; gone?: boolean }) {
  const style = { '--at': at } as CSSProperties; // as: React's type knows no custom properties
  return (
    <span className={gone ? 'tag gone' : 'tag'} style={style}>
      {number}
    </span>
  );
}
