import type { ReactNode } from 'react';

/** What a page opens with: one sentence that answers its job, a line of why, at most three actions. */
export function Answer({
  title,
  why,
  children,
}: {
  readonly title: ReactNode;
  readonly why?: ReactNode;
  readonly children?: ReactNode;
}) {
  return (
    <div className="answer">
      <div className="say" aria-live="polite">
        <h1>{title}</h1>
        {why !== undefined && why !== null && why !== '' && <p>{why}</p>}
      </div>
      {children && <div className="do">{children}</div>}
    </div>
  );
}
