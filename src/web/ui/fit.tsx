import type { ReactNode } from 'react';

export type Fits = 'exact' | 'serves' | 'check' | 'missing' | 'none';

/** How well something fits: a shape and a word, always both. */
export function Fit({ fit, children }: { readonly fit: Fits; readonly children?: ReactNode }) {
  return (
    <span className="fit" data-fit={fit}>
      {children}
    </span>
  );
}
