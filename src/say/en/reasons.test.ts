import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sayReasons } from './reasons.ts';

const same = (fact: string) => ({ code: 'same', args: { fact, has: 'x' } }) as const;

void test('what is the same is said once for all facts, in its place', () => {
  assert.deepEqual(
    sayReasons([
      { code: 'short', args: { free: 1, need: 2 } },
      same('value'),
      same('package'),
      same('tolerance'),
      { code: 'described', args: {} },
    ]),
    ['1 free, 2 needed', 'value, package and tolerance as asked', 'told by words only, without a part number'],
  );
  assert.deepEqual(sayReasons([same('pins')]), ['number of pins as asked']);
});
