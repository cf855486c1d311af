import assert from 'node:assert/strict';
import { test } from 'node:test';
import { z } from 'zod';
import { sayWanted } from './wanted.ts';

const SHAPE = z.strictObject({
  id: z.guid(),
  bag: z.int().positive(),
  name: z.string().min(1),
  kind: z.enum(['picked', 'counted']),
});
const FIT = { id: '3f0c2e1a-0000-4000-8000-000000000000', bag: 1, name: 'x', kind: 'picked' };

void test('what does not fit is told by what is wanted, in plain words', () => {
  const wanted = (body: object): string | undefined => SHAPE.safeParse({ ...FIT, ...body }).error?.issues.map(sayWanted)[0];
  assert.equal(wanted({ name: undefined }), 'a text');
  assert.equal(wanted({ bag: 'x' }), 'a number');
  assert.equal(wanted({ bag: 1.5 }), 'a whole number');
  assert.equal(wanted({ bag: 0 }), 'more than 0');
  assert.equal(wanted({ name: '' }), 'at least 1 character');
  assert.equal(wanted({ id: 'x' }), 'a UUID');
  assert.equal(wanted({ kind: 'x' }), 'one of picked, counted');
  assert.equal(wanted({ more: 1 }), "without 'more', which is not known here");
});
