import { FIND_PAGE, FIRST_RUN, sayExhausted, sayLab } from '#say/en/find-page.ts';
import type { useBags } from './ask.ts';

/** What the page says before anything is typed: what the lab holds, or how to begin with an empty one. */
export function LabSummary({ bags }: { readonly bags: ReturnType<typeof useBags> }) {
  if (bags.state === 'waiting') return null;
  if (bags.state === 'failed') return <p role="alert">{FIND_PAGE.failedWhy(bags.why)}</p>;
  const all = bags.value.bags;
  if (all.length === 0) return <FirstRun />;
  const boxes = new Set(all.map((bag) => bag.box).filter(Boolean));
  return (
    <div className="answer">
      <div className="say">
        <h1>{sayLab(all.length, boxes.size)}</h1>
        <p>{sayExhausted(all.filter((bag) => bag.onHand === 0).length)}</p>
      </div>
    </div>
  );
}

function FirstRun() {
  return (
    <>
      <div className="answer">
        <div className="say">
          <h1>{FIRST_RUN.title}</h1>
          <p>{FIRST_RUN.lead}</p>
        </div>
      </div>
      <dl className="ways">
        {FIRST_RUN.ways.map(([command, what]) => (
          <div key={command} className="way">
            <dt className="code">{command}</dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
