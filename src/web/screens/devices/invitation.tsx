import type { Invite } from '#api/devices.ts';
import { DEVICES_PAGE, sayUntil } from '#say/en/devices-page.ts';
import { sayTime } from '#say/en/when.ts';
import { useAct } from '../../lab/act.ts';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';
import { Qr } from '../../ui/qr.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';

/** Invites one phone: the code to scan, its address as text, and what plain http keeps from a phone. */
export function Invitation() {
  const invite = useAct<object, Invite>('/api/devices/invites');
  return (
    <section className="stack invitation">
      {invite.done && (
        <div className="shown">
          <Qr squares={invite.done.squares} says={DEVICES_PAGE.inviteCode} />
          <div className="stack">
            <h2>{DEVICES_PAGE.inviting}</h2>
            <p className="two">{sayUntil(sayTime(invite.done.until))}</p>
            <p>{DEVICES_PAGE.orType}</p>
            <p className="command">{invite.done.url}</p>
          </div>
        </div>
      )}
      <p>
        <Button look={invite.done ? 'plain' : 'main'} disabled={invite.busy} onClick={() => void invite.run({})}>
          {invite.done ? DEVICES_PAGE.anotherCode : DEVICES_PAGE.invite}
        </Button>
      </p>
      <TroubleNote trouble={invite.trouble} again={() => void invite.again()} />
      <Note title={`${DEVICES_PAGE.plain}.`}>{DEVICES_PAGE.plainWhy}</Note>
    </section>
  );
}
