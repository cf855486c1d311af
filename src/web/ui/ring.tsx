import { UI } from '#say/en/ui.ts';

/** The number of a tray cell: round, so that it is never taken for a bag. */
export function Ring({ cell }: { readonly cell: number }) {
  return (
    <span className="ring">
      <span className="vh">{UI.cell}</span>
      {cell}
    </span>
  );
}
