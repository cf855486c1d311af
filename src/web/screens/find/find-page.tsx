import { useEffect, useRef, useState } from 'react';
import { FIND_PAGE } from '#say/en/find-page.ts';
import { Bar } from '../../ui/bar.tsx';
import { useBags, useChange, useFound } from './ask.ts';
import { FoundTable } from './found-table.tsx';
import { answerOf } from './find.ts';
import { LabSummary } from './lab-summary.tsx';

const wordsInAddress = (): string => new URLSearchParams(location.search).get('words') ?? '';

/** Type a part in any notation, a bag number or a box; the bags that answer, and why. */
export function FindPage() {
  const [words, setWords] = useState(wordsInAddress);
  const field = useRef<HTMLInputElement>(null);
  const change = useChange();
  const found = useFound(words, change);
  const bags = useBags(change);

  useEffect(() => {
    const address = words.trim() ? `?words=${encodeURIComponent(words)}` : location.pathname;
    history.replaceState(null, '', address);
  }, [words]);

  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== '/' || event.target instanceof HTMLInputElement) return;
      event.preventDefault();
      field.current?.focus();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);

  return (
    <>
      <Bar />
      <main id="main" className="page find">
        <div className="asking">
          <label className="field ask">
            <span>{FIND_PAGE.field}</span>
            <input
              ref={field}
              type="search"
              value={words}
              autoComplete="off"
              spellCheck={false}
              onChange={(event) => setWords(event.target.value)}
              onKeyDown={(event) => event.key === 'Escape' && setWords('')}
            />
          </label>
          <p className="three s">{FIND_PAGE.help}</p>
        </div>
        {words.trim() ? <Answer found={found} words={words} /> : <LabSummary bags={bags} />}
      </main>
    </>
  );
}

function Answer({ found, words }: { readonly found: ReturnType<typeof useFound>; readonly words: string }) {
  if (found.state === 'waiting') return <p className="answer two">{FIND_PAGE.looking}</p>;
  if (found.state === 'failed') {
    return (
      <div className="answer" role="alert">
        <h1>{FIND_PAGE.failed}</h1>
        <p>{FIND_PAGE.failedWhy(found.why)}</p>
      </div>
    );
  }
  return (
    <>
      <div className="answer" aria-live="polite">
        <h1>{answerOf(found.value.found)}</h1>
      </div>
      <FoundTable found={found.value.found} words={words} />
    </>
  );
}
