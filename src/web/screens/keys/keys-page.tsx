import { KEY_GROUPS, KEYS_PAGE } from '#say/en/keys-page.ts';
import { Answer } from '../../ui/answer.tsx';
import { Choice } from '../../ui/choice.tsx';
import { useKeysOn } from '../../ui/keys.ts';
import './keys.css';

/** All keys by page, and the switch that turns single keys off (WCAG 2.2, 2.1.4). */
export function KeysPage() {
  const [on, setOn] = useKeysOn();
  return (
    <main id="main" className="page keys-page">
      <Answer title={KEYS_PAGE.title} why={KEYS_PAGE.why} />
      <Choice
        legend={KEYS_PAGE.switch}
        options={[
          { value: 'on', says: KEYS_PAGE.on },
          { value: 'off', says: KEYS_PAGE.off },
        ]}
        value={on ? 'on' : 'off'}
        onChange={(wanted) => setOn(wanted === 'on')}
        help={KEYS_PAGE.switchHelp}
      />
      <div className="groups">
        {KEY_GROUPS.map((group) => (
          <section key={group.name}>
            <h2 className="headed">{group.name}</h2>
            <dl>
              {group.keys.map(({ press, does }) => (
                <div key={does}>
                  <dt>
                    {press.map((one) => (
                      <kbd key={one}>{one}</kbd>
                    ))}
                  </dt>
                  <dd>{does}</dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </main>
  );
}
