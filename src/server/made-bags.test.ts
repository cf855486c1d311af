import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { Imported } from '#api/files.ts';
import { bodyOf, httpLab, type HttpLab } from '#test/http-lab.ts';

let http: HttpLab;
before(async () => {
  http = await httpLab();
});
after(() => http.end());

void test('a kept list says what to write on which bag: doubts first, then the numbers that it did not give, at most 200', async () => {
  const list = 'Bag,What,Pcs,Box\n12,10k 1% 0805 resistor,4,A\n13,22k 1% 0805 resistor,about 50,A\n,33k 1% 0805 resistor,7,\n';
  const made = await keep('shelf.csv', list);
  assert.deepEqual(
    made.made.map(({ row, bag, name, box, numbered, doubts }) => [row, bag, name.split(/[\s,]/)[0], box, numbered, doubts]),
    [
      [3, 13, '22', 'A', false, 1],
      [4, 14, '33', null, true, 0],
      [2, 12, '10', 'A', false, 0],
    ],
  );
  const rows = Array.from({ length: 230 }, (_, at) => `${at + 100},10k 1% 0805 resistor,4,B`);
  const many = await keep('many.csv', ['Bag,What,Pcs,Box', ...rows].join('\n'));
  assert.deepEqual([many.bags, many.made.length, many.made.at(-1)?.bag], [230, 200, 299]);
});

async function keep(name: string, text: string): Promise<Imported> {
  const { draft } = await bodyOf<{ draft: string }>(http.upload(`/api/drafts?name=${name}&is=list`, text), 201);
  return bodyOf<Imported>(http.act(`/api/drafts/${draft}/keep`, { id: randomUUID() }), 201);
}
