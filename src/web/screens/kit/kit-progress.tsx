import type { KitTakeView } from '#api/kits.ts';
import { sayRail, sayToGo } from '#say/en/kit-page.ts';
import { Rail } from '../../ui/rail.tsx';
import { isOpen } from './walk.ts';

export function KitProgress({ takes }: { readonly takes: readonly KitTakeView[] }) {
  const open = takes.filter(isOpen).length;
  const done = takes.length - open;
  return (
    <div className="prog">
      <Rail done={done} all={takes.length} says={sayRail(done, takes.length)} />
      <span>{sayToGo(open)}</span>
    </div>
  );
}
