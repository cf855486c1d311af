import { Link, useNavigate } from '@tanstack/react-router';
import type { KitView } from '#api/kits.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { KIT, sayMade, sayPieces, sayStillOpen, sayUndoPick } from '#say/en/kit-page.ts';
import { Button } from '../../ui/button.tsx';
import { FinishForm } from './finish-form.tsx';
import { awaitsReturn, canPick, likelyMade } from './kit.ts';
import type { Picking } from './use-picking.ts';
import { isOpen, lastPick } from './walk.ts';

interface KitFootProps {
  readonly kit: KitView;
  readonly picking: Picking;
}

/** What is in the kit, what it lacks, what comes after. */
export function KitFoot({ kit, picking }: KitFootProps) {
  const pieces = kit.takes.reduce((sum, { planned }) => sum + planned, 0);
  const spare = kit.takes.reduce((sum, take) => sum + take.spare, 0);
  const short = kit.lines.filter((line) => line.short > 0);
  return (
    <>
      <div className="after">
        <section>
          <h2>{KIT.inKit}</h2>
          <p className="two">
            {sayPieces(pieces, spare)} {spare > 0 && KIT.spareWhy}
          </p>
          {short.length > 0 && (
            <ul className="shorts">
              {short.map((line) => (
                <li key={line.line}>
                  <b>{writeRefs(line.refs) || line.said.name}</b> {line.said.name}{' '}
                  <span className="stop">
                    {line.short} {KIT.short}
                  </span>
                </li>
              ))}
            </ul>
          )}
        </section>
        <After kit={kit} picking={picking} />
      </div>
      {canPick(kit) && <Hints />}
    </>
  );
}

function After({ kit, picking: { acts } }: KitFootProps) {
  const navigate = useNavigate();
  const { id: build, boards } = kit.build;
  const open = kit.takes.filter(isOpen).length;
  const last = canPick(kit) ? lastPick(kit.acts) : null;
  const likely = likelyMade(kit);
  const finish = async (made: number): Promise<void> => {
    if (await acts.finish(sayMade, made)) await navigate({ to: '/kits/$build/leftovers', params: { build } });
  };
  return (
    <section>
      <h2>{KIT.after}</h2>
      <p className="two">
        {KIT.afterWhy} {canPick(kit) && open > 0 && sayStillOpen(open)}
      </p>
      {canPick(kit) && (
        <FinishForm
          key={likely}
          boards={boards}
          likely={likely}
          busy={acts.busy}
          main={open === 0}
          onFinish={(made) => void finish(made)}
        />
      )}
      {awaitsReturn(kit) && (
        <p>
          <Link to="/kits/$build/leftovers" params={{ build }} className="btn">
            {KIT.leftovers}
          </Link>
        </p>
      )}
      {last && last.act !== acts.latest?.act && (
        <p>
          <Button disabled={acts.busy} onClick={() => void acts.undo(last.act, KIT.undone)}>
            {sayUndoPick(last.pieces, last.takes.length)}
          </Button>
        </p>
      )}
    </section>
  );
}

function Hints() {
  const { keys } = KIT;
  return (
    <p className="keys">
      <span>
        <kbd>Space</kbd> {keys.in}
      </span>
      <span>
        <kbd>-</kbd> {keys.fewer}
      </span>
      <span>
        <kbd>S</kbd> {keys.skip}
      </span>
      <span>
        <kbd>↑</kbd> <kbd>↓</kbd> {keys.row}
      </span>
      <span>{keys.jump}</span>
    </p>
  );
}
