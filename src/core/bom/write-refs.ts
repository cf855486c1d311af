const NUMBERED = /^(.*\D)(\d+)$/;

interface Run {
  readonly prefix: string;
  readonly from: string;
  readonly to: string;
}

/**
 * References as a person writes them, in their order: `R1 R4 R5 … R9` → `R1, R4–R9`; three or more in a row are a range.
 * What `readRefs` reads of it are the same references. The number is compared as written, so that `R09, R10` stay two.
 */
export function writeRefs(refs: readonly string[]): string {
  const runs: Run[] = [];
  for (const ref of refs) {
    const [, prefix = ref, number = ''] = NUMBERED.exec(ref) ?? [];
    const last = runs.at(-1);
    if (last && number !== '' && last.prefix === prefix && isNext(last.to, number)) runs.splice(-1, 1, { ...last, to: number });
    else runs.push({ prefix, from: number, to: number });
  }
  return runs.flatMap(writeRun).join(', ');
}

/** Whether a range from one to the other is read back with both numbers as they are written. */
function isNext(before: string, number: string): boolean {
  const padded = before.startsWith('0') || number.startsWith('0');
  return (
    Number(number) === Number(before) + 1 && (!padded || before.length === number.length) && Number.isSafeInteger(Number(number))
  );
}

function writeRun({ prefix, from, to }: Run): string[] {
  if (from === to) return [`${prefix}${from}`];
  if (Number(to) === Number(from) + 1) return [`${prefix}${from}`, `${prefix}${to}`];
  return [`${prefix}${from}–${prefix}${to}`];
}
