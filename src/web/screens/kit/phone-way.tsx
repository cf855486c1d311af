import { Link } from '@tanstack/react-router';
import { KIT } from '#say/en/kit-page.ts';
import { UI } from '#say/en/ui.ts';
import { useDevices } from '../../lab/answers.ts';
import { Note } from '../../ui/note.tsx';

/** The address of this kit as a phone in the same network opens it. */
export function PhoneWay({ build }: { readonly build: string }) {
  const devices = useDevices();
  const addresses = devices.value?.lan ? devices.value.addresses : [];
  const [first] = addresses;
  if (!first)
    return (
      <Note
        title={KIT.openHere}
        actions={
          <>
            <Link to="/devices" className="btn">
              {UI.devices}
            </Link>
            <Here build={build} />
          </>
        }
      />
    );
  return <Note title={KIT.open(new URL(`kits/${build}/pick`, first).href)} actions={<Here build={build} />} />;
}

/** The same page for one hand, on this screen. */
function Here({ build }: { readonly build: string }) {
  return (
    <Link to="/kits/$build/pick" params={{ build }} className="btn">
      {KIT.here}
    </Link>
  );
}
