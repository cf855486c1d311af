import type { useBags } from './ask.ts';
import { countOf } from '../../ui/count-of.ts';

/** What the page says before anything is typed: what the lab holds, or how to begin with an empty one. */
export function LabSummary({ bags }: { readonly bags: ReturnType<typeof useBags> }) {
  if (bags.state === 'waiting') return null;
  if (bags.state === 'failed') return <p role="alert">The lab did not answer: {bags.why}.</p>;
  const all = bags.value.bags;
  if (all.length === 0) return <FirstRun />;
  const boxes = new Set(all.map((bag) => bag.box).filter(Boolean));
  const exhausted = all.filter((bag) => bag.onHand === 0).length;
  return (
    <div className="answer">
      <div className="say">
        <h1>
          {countOf(all.length, 'bag')} in {countOf(boxes.size, 'box', 'boxes')}.
        </h1>
        <p>{exhausted ? `${countOf(exhausted, 'bag')} exhausted. ` : ''}Type what you look for, in any notation.</p>
      </div>
    </div>
  );
}

function FirstRun() {
  return (
    <>
      <div className="answer">
        <div className="say">
          <h1>This lab is empty.</h1>
          <p>Begin with one of these in a terminal; this page follows by itself.</p>
        </div>
      </div>
      <dl className="ways">
        <dt className="code">bin/bagatelle.js demo</dt>
        <dd>fills it with a demo lab, to try everything without fear</dd>
        <dt className="code">bin/bagatelle.js import LIST.csv --dry-run</dt>
        <dd>shows what your own list would become; without --dry-run it takes it in, and undo takes it back</dd>
        <dt className="code">bin/bagatelle.js receive "100 4k7 1% 0805"</dt>
        <dd>takes one bag in</dd>
        <dt className="code">bin/bagatelle.js restore FILE</dt>
        <dd>brings a lab back from its backup</dd>
      </dl>
    </>
  );
}
