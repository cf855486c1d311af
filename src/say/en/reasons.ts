import type { Because } from '#core/serve/verdict.ts';
import { sayBecause } from './because.ts';
import { factName } from './fact-name.ts';

/** Reasons as a person reads them: all that is the same in one, where the first of it stands: `value, package and tolerance as asked`. */
export function sayReasons(because: readonly Because[]): string[] {
  const same = because.filter(({ code }) => code === 'same');
  const names = [...new Set(same.map(({ args }) => factName(args['fact'], args['has'])))];
  return because.flatMap((one) => {
    if (one.code !== 'same') return [sayBecause(one)];
    return one === same[0] ? [`${listed(names)} as asked`] : [];
  });
}

/** `a`, `a and b`, `a, b and c`. */
function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}
