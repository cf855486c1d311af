import type { KitTakeView } from '#api/kits.ts';
import { KIT, sayAreIn, type CellName } from '#say/en/kit-page.ts';
import { Button } from '../../ui/button.tsx';
import { FewerForm } from './fewer-form.tsx';
import { toTake, type Ending } from './walk.ts';

interface StopPanelProps {
  readonly take: KitTakeView;
  readonly where: CellName;
  readonly fewer: boolean;
  readonly busy: boolean;
  readonly onPlanned: () => void;
  readonly onFewer: (open: boolean) => void;
  readonly onPut: (quantity: number, ending?: Ending) => void;
  readonly onSkip: () => void;
}

/** What can be done at the chosen stop. */
export function StopPanel({ take, where, fewer, busy, onPlanned, onFewer, onPut, onSkip }: StopPanelProps) {
  return (
    <div className="panel" role="group" aria-label={KIT.chosen}>
      {fewer ? (
        <FewerForm key={take.id} take={take} where={where} busy={busy} onPut={onPut} onClose={() => onFewer(false)} />
      ) : (
        <div className="do">
          <Button look="main" keyHint="Space" disabled={busy} onClick={onPlanned}>
            {sayAreIn(toTake(take), where)}
          </Button>
          <Button keyHint="−" disabled={busy} onClick={() => onFewer(true)}>
            {KIT.fewer}
          </Button>
          <Button keyHint="S" disabled={busy} onClick={onSkip}>
            {KIT.skip}
          </Button>
        </div>
      )}
    </div>
  );
}
