import { useState } from 'react';
import { DEVICES_PAGE } from '#say/en/devices-page.ts';
import { myName, keepMyName } from '../../lab/my-name.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';

/** The name under which this browser acts, at the machine that serves the lab. */
export function MyName() {
  const [name, setName] = useState(myName);
  const [kept, setKept] = useState(false);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        keepMyName(name);
        setKept(true);
      }}
    >
      <Field
        label={DEVICES_PAGE.name}
        help={kept ? DEVICES_PAGE.saved : DEVICES_PAGE.nameHelp}
        value={name}
        maxLength={60}
        onChange={(event) => {
          setName(event.target.value);
          setKept(false);
        }}
      />
      <p>
        <Button submit>{DEVICES_PAGE.save}</Button>
      </p>
    </form>
  );
}
