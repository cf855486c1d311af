import { DEVICES_PAGE, sayDevices } from '#say/en/devices-page.ts';
import { sayMoment } from '#say/en/when.ts';
import type { DeviceView } from '#api/devices.ts';
import { useAct } from '../../lab/act.ts';
import { useDevices, useLab } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { useNow } from '../../ui/now.ts';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { Invitation } from './invitation.tsx';
import { MyName } from './my-name.tsx';
import './devices.css';

/** Who may come in beside this machine: invite a phone, forget one; the name of this browser; a backup to take along. */
export function DevicesPage() {
  const { value, waiting, trouble } = useDevices();
  const lab = useLab();
  const here = lab.value?.you.here ?? false;
  const devices = value?.devices ?? [];
  return (
    <main id="main" className="page devices">
      {waiting || !value ? (
        <Answer title={DEVICES_PAGE.reading} />
      ) : value.lan ? (
        <Answer title={devices.length > 0 ? sayDevices(devices.length) : DEVICES_PAGE.alone} why={DEVICES_PAGE.why} />
      ) : (
        <Answer title={DEVICES_PAGE.closed} why={DEVICES_PAGE.closedWhy} />
      )}
      <TroubleNote trouble={trouble} />
      {value && !value.lan && <HowToOpen />}
      {value?.lan && (here ? <Invitation /> : <p className="two">{DEVICES_PAGE.here}</p>)}
      {devices.length > 0 && <DeviceTable devices={devices} here={here} />}
      <div className="pair-of">
        {here && <MyName />}
        <section className="stack">
          <h2>{DEVICES_PAGE.backup}</h2>
          <p className="two">{DEVICES_PAGE.backupWhy}</p>
          <p>
            <a className="btn" href="/api/backup" download>
              {DEVICES_PAGE.backupDo}
            </a>
          </p>
        </section>
      </div>
    </main>
  );
}

function HowToOpen() {
  return (
    <section className="stack">
      <p>
        <code className="command">{DEVICES_PAGE.command}</code>
      </p>
      <p>
        <code className="command">{DEVICES_PAGE.orCommand}</code>
      </p>
      <p className="two">{DEVICES_PAGE.closedThen}</p>
    </section>
  );
}

function DeviceTable({ devices, here }: { readonly devices: readonly DeviceView[]; readonly here: boolean }) {
  const now = useNow();
  const { columns } = DEVICES_PAGE;
  return (
    <div className="col">
      <table className="ledger">
        <caption className="vh">{DEVICES_PAGE.page}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.name}</th>
            <th scope="col">{columns.paired}</th>
            <th scope="col">{columns.seen}</th>
            <th scope="col" className="n">
              <span className="vh">{columns.forget}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {devices.map((device) => (
            <tr key={device.id}>
              <td className="main wrap">
                {device.name} {device.you && <span className="why">{DEVICES_PAGE.you}</span>}
              </td>
              <td className="two">{sayMoment(device.paired, now)}</td>
              <td className="two">{device.seen === null ? DEVICES_PAGE.never : sayMoment(device.seen, now)}</td>
              <td className="n">{(here || device.you) && <Forget device={device} />}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Forget({ device }: { readonly device: DeviceView }) {
  const forget = useAct<object, object>(`/api/devices/${encodeURIComponent(device.id)}/forget`);
  return (
    <>
      <Button
        look="quiet"
        disabled={forget.busy}
        onClick={() => void forget.run({})}
        aria-label={`${DEVICES_PAGE.forget} ${device.name}`}
      >
        {DEVICES_PAGE.forget}
      </Button>
      <TroubleNote trouble={forget.trouble} again={() => void forget.again()} />
    </>
  );
}
