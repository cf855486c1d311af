import type { CSSProperties } from 'react';

/** Progress or a length, drawn as the zip of a bag: `done` of `all`, with a mark where it stands. Its sentence is its name. */
export function Rail({ done, all, says }: { readonly done: number; readonly all: number; readonly says: string }) {
  const share = all > 0 ? Math.min(1, done / all) : 0;
  const style = { '--done': share, '--x': share } as CSSProperties; // as: React's type knows no custom properties
  return (
    <div
      className="rail"
      style={style}
      role="progressbar"
      aria-valuemin={0}
      aria-valuemax={all}
      aria-valuenow={done}
      aria-label={says}
    >
      <i className="v" />
    </div>
  );
}
