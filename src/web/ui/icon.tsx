const PATHS = {
  scan: 'M1.5 5V1.5H5M11 1.5h3.5V5M14.5 11v3.5H11M5 14.5H1.5V11M3.5 8h9',
  tick: 'M2.5 8.5 6.2 12 13.5 4',
  print: 'M4 6V1.5h8V6M4 11.5H1.5V6h13v5.5H12M4 9.5h8v5H4z',
  go: 'M2 8h11M9 4l4 4-4 4',
  up: 'M8 14V3M4 7l4-4 4 4',
  close: 'M3.5 3.5l9 9M12.5 3.5l-9 9',
  minus: 'M3 8h10',
  plus: 'M3 8h10M8 3v10',
} as const;

/** A drawn sign; it never stands without its word. */
export function Icon({ sign }: { readonly sign: keyof typeof PATHS }) {
  return (
    <svg className="ico" aria-hidden="true" viewBox="0 0 16 16">
      <path d={PATHS[sign]} />
    </svg>
  );
}
