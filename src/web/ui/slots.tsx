import type { CSSProperties } from 'react';

/** One upright of the look into a box. */
export type Slot = 'live' | 'empty' | 'free' | 'hit' | 'gone' | 'todo' | 'got';

const TOP: Readonly<Record<Slot, number>> = { live: 10, empty: 18, free: 27, hit: 0, gone: 0, todo: 5, got: 10 };

const KINDS = ['free', 'live', 'empty', 'got', 'todo', 'gone', 'hit'] as const satisfies readonly Slot[];

/** One path for all uprights of a kind. */
function uprights(slots: readonly Slot[], kind: Slot): string {
  return slots.map((slot, at) => (slot === kind ? `M${at * 10 + 5} ${TOP[kind]}V34` : '')).join('');
}

interface SlotsProps {
  /** front first */
  readonly slots: readonly Slot[];
  /** what stands under its ends */
  readonly front: string;
  readonly back: string;
  /** the sentence that says the same */
  readonly says: string;
  readonly height?: string;
}

/** A look down into a box: one upright a place, front left. Tall = this one (dashed where it is exhausted), heavy = also today, dotted = exhausted, stub = free. */
export function Slots({ slots, front, back, says, height = '2.5rem' }: SlotsProps) {
  const width = Math.max(1, slots.length) * 10;
  const style = { '--h': height } as CSSProperties; // as: React's type knows no custom properties
  return (
    <div className="slots">
      <svg viewBox={`0 0 ${width} 36`} preserveAspectRatio="none" role="img" aria-label={says} style={style}>
        {KINDS.map((kind) => (
          <path key={kind} className={kind} vectorEffect="non-scaling-stroke" d={uprights(slots, kind)} />
        ))}
        <line className="zip" vectorEffect="non-scaling-stroke" x1={0} x2={width} y1={35} y2={35} />
      </svg>
      <div className="ends" aria-hidden="true">
        <span>{front}</span>
        <span>{back}</span>
      </div>
    </div>
  );
}
