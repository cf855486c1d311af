import { tagClass, tagStyle } from '../../ui/tag.tsx';

/** Uprights of a box as one path a kind; the numbers are a drawing, not stock. */
const FULL = Array.from({ length: 60 }, (_, at) => at);
const EMPTY = new Set([5, 18, 30, 43, 56]);
const HIT = 53;
const upright = (at: number, top: number): string => `M${at * 10 + 5} ${top}V34`;

/** A full box, looked down into. */
export function FullBox() {
  const live = FULL.filter((at) => !EMPTY.has(at) && at !== HIT);
  return (
    <div className="slots mini" aria-hidden="true">
      <svg viewBox="0 0 600 36" preserveAspectRatio="none">
        <path className="live" vectorEffect="non-scaling-stroke" d={live.map((at) => upright(at, 10)).join('')} />
        <path className="empty" vectorEffect="non-scaling-stroke" d={[...EMPTY].map((at) => upright(at, 18)).join('')} />
        <path className="hit" vectorEffect="non-scaling-stroke" d={upright(HIT, 0)} />
        <line className="zip" vectorEffect="non-scaling-stroke" x1={0} x2={600} y1={35} y2={35} />
      </svg>
    </div>
  );
}

const CELLS = [
  ['10k', '0805', '412'],
  ['100n', '50V', '1240'],
  ['M3x8', '', '180'],
] as const;

/** A list as it comes. */
export function Sheet() {
  return (
    <div className="csv" aria-hidden="true">
      {CELLS.map(([value, shape, count]) => (
        <p key={value}>
          <span>{value}</span>
          <span>{shape}</span>
          <span>{count}</span>
        </p>
      ))}
    </div>
  );
}

/** A box that is being filled from the front. */
export function BoxBegun() {
  const free = FULL.slice(9);
  return (
    <div className="slots mini" aria-hidden="true">
      <svg viewBox="0 0 600 36" preserveAspectRatio="none">
        <path
          className="live"
          vectorEffect="non-scaling-stroke"
          d={FULL.slice(0, 8)
            .map((at) => upright(at, 10))
            .join('')}
        />
        <path className="hit" vectorEffect="non-scaling-stroke" d={upright(8, 0)} />
        <path className="free" vectorEffect="non-scaling-stroke" d={free.map((at) => upright(at, 27)).join('')} />
        <line className="zip" vectorEffect="non-scaling-stroke" x1={0} x2={600} y1={35} y2={35} />
      </svg>
    </div>
  );
}

/** Boxes as they stood, one on the other. */
export function Stack() {
  return (
    <svg className="stackpic" viewBox="0 0 120 64" aria-hidden="true">
      {[0, 1, 2].map((at) => (
        <g key={at}>
          <path d={`M4 ${6 + at * 20}H116v16H4z`} />
          <path d={`M4 ${9 + at * 20}H116`} />
          <path className="mark" d={`M${26 + at * 30} ${6 + at * 20}v3`} />
        </g>
      ))}
    </svg>
  );
}

/** The first bag. */
export function FirstBag() {
  return (
    <span className={tagClass({ size: 'big' })} style={tagStyle(1)} aria-hidden="true">
      1
    </span>
  );
}
