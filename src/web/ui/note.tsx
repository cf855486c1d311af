import type { ReactNode } from 'react';
import { Fit, type Fits } from './fit.tsx';

const FIT: Readonly<Record<NoteKind, Fits>> = { go: 'exact', check: 'check', stop: 'missing', plain: 'none' };
export type NoteKind = 'go' | 'check' | 'stop' | 'plain';

/** One doubt, advice, error or empty state: a bold first sentence, what to do next, at most two actions. */
export function Note({
  kind = 'plain',
  title,
  children,
  actions,
}: {
  readonly kind?: NoteKind;
  readonly title: ReactNode;
  readonly children?: ReactNode;
  readonly actions?: ReactNode;
}) {
  return (
    <div className={kind === 'plain' ? 'note' : `note ${kind}`} role={kind === 'stop' ? 'alert' : undefined}>
      <Fit fit={FIT[kind]} />
      <div className="body">
        <p>
          <b>{title}</b> {children}
        </p>
        {actions && <div className="do">{actions}</div>}
      </div>
    </div>
  );
}
