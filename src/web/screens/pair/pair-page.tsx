import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import type { Paired } from '#api/devices.ts';
import { PAIR_PAGE } from '#say/en/devices-page.ts';
import { useAct } from '../../lab/act.ts';
import { queries } from '../../lab/answers.ts';
import { changes } from '../../lab/changes.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import './pair.css';

/** The first page of a device that was invited: its name, and in. */
export function PairPage() {
  const { code: told } = useSearch({ from: '/pair' });
  const navigate = useNavigate();
  const pair = useAct<{ readonly code: string; readonly name: string }, Paired>('/api/pair');
  const [code, setCode] = useState(told ?? '');
  const [name, setName] = useState('');
  const ready = name.trim() !== '' && code.trim() !== '';
  const join = async (): Promise<void> => {
    const joined = await pair.run({ code: code.trim(), name: name.trim() });
    if (!joined) return;
    changes.again();
    queries.clear();
    await navigate({ to: '/kits', replace: true });
  };
  return (
    <main id="main" className="page pairing">
      <Answer title={PAIR_PAGE.title} why={PAIR_PAGE.why} />
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          if (ready) void join();
        }}
      >
        {told === undefined && (
          <>
            <Note title={PAIR_PAGE.noCode}>{PAIR_PAGE.noCodeWay}</Note>
            <Field
              label={PAIR_PAGE.code}
              value={code}
              onChange={(event) => setCode(event.target.value)}
              autoCapitalize="characters"
              spellCheck={false}
            />
          </>
        )}
        <Field
          label={PAIR_PAGE.name}
          help={PAIR_PAGE.nameHelp}
          value={name}
          maxLength={60}
          onChange={(event) => setName(event.target.value)}
        />
        <div className="do" role="group" aria-label={PAIR_PAGE.suggest}>
          {PAIR_PAGE.suggestions.map((suggestion) => (
            <Button key={suggestion} onClick={() => setName(suggestion)}>
              {suggestion}
            </Button>
          ))}
        </div>
        <TroubleNote trouble={pair.trouble} again={() => void join()} />
        <Button look="main" submit disabled={!ready || pair.busy}>
          {pair.busy ? PAIR_PAGE.joining : PAIR_PAGE.join}
        </Button>
      </form>
    </main>
  );
}
