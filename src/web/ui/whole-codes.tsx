import { Fragment } from 'react';
import { unbroken } from './unbroken.ts';

/** Text of a narrow cell whose sizes and short codes stay on one line. */
export function WholeCodes({ text }: { readonly text: string }) {
  let before = 0;
  return unbroken(text).map(({ text: piece, whole }) => {
    const key = `${before} ${piece}`;
    before += piece.length;
    return whole ? (
      <span key={key} className="v">
        {piece}
      </span>
    ) : (
      <Fragment key={key}>{piece}</Fragment>
    );
  });
}
