import { LOOKS } from '#core/part/marking/marking.ts';
import { LOOK_WORDS } from '#say/en/markings.ts';
import { STRAY_PAGE } from '#say/en/stray-page.ts';
import { Answer } from '../../ui/answer.tsx';
import { Choice } from '../../ui/choice.tsx';
import { useTypedWords } from '../find/typed-words.ts';
import { BandForm } from './band-form.tsx';
import { MarkForm } from './mark-form.tsx';
import { useStrayPlace } from './place.ts';
import { ReadingTable } from './reading-table.tsx';
import { answerOf, readSeenPart } from './stray.ts';
import './stray.css';

/** What is it, and which bag is it from: a part without its bag, by its bands or by what is printed on it. */
export function StrayPage() {
  const place = useStrayPlace();
  const [text, type] = useTypedWords(place.mark, (mark) => place.go({ mark }));
  const seen = { ...place, mark: text };
  const read = readSeenPart(seen);
  const { title, why } = answerOf(seen, read);
  return (
    <main id="main" className="page stray">
      <Answer title={title} why={why} />
      <Choice
        legend={STRAY_PAGE.looks}
        options={LOOKS.map((look) => ({ value: look, says: LOOK_WORDS[look] }))}
        value={place.look}
        onChange={(look) => place.go({ look }, 'push')}
      />
      {place.look === 'bands' ? <BandForm place={place} /> : <MarkForm place={place} text={text} onText={type} />}
      {read !== null && read.readings.length > 0 && <ReadingTable readings={read.readings} />}
    </main>
  );
}
