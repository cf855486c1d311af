import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { KitAnswer, KitTakeView, KitView } from '#api/kits.ts';
import { checkLab } from '#db/check.ts';
import { bodyOf, httpLab, type HttpLab, type HttpTold } from '#test/http-lab.ts';

const BAGS = `Bag,Qty,Description,Box
1,40,10uF 25V X7R 0805,A
2,30,4k7 1% 0805 resistor,A
3,50,10k 1% 0805 resistor,B
`;
const BOM = `Reference,Value,Footprint
"C1,C2",10uF 25V X7R,C_0805
R1,4k7 1%,R_0805
"R2,R3,R4",10k 1%,R_0805
`;

let http: HttpLab;
before(async () => {
  http = await httpLab();
  await bodyOf(http.upload(`/api/imports?name=bags.csv&id=${randomUUID()}`, BAGS), 201);
  await bodyOf(http.upload(`/api/boards?name=plover.csv&id=${randomUUID()}`, BOM), 201);
});
after(() => http.end());

interface Acted {
  readonly id: string;
  readonly build: string;
  readonly warnings: readonly { code: string; text: string }[];
  readonly picked: number;
  readonly open: number;
}

const kit = (build: string): Promise<KitView> => bodyOf(http.get(`/api/kits/${build}`));
const pick = (build: string, body: object): Promise<HttpTold> => http.act(`/api/kits/${build}/picks`, body);
const undo = (act: string): Promise<unknown> => bodyOf(http.act('/api/undo', { act }), 201);
const stock = async (): Promise<unknown[]> =>
  Promise.all(
    [1, 2, 3].map(async (bag) => {
      const { onHand, free } = await bodyOf<{ onHand: number; free: number }>(http.get(`/api/bags/${bag}`));
      return [onHand, free];
    }),
  );

/** A kit for so many boards, without spares, gone when the test is over; everything is then where it was. */
async function withKit(
  boards: number,
  fn: (build: string, takeOf: (bag: number) => Promise<KitTakeView>) => Promise<void>,
): Promise<void> {
  const before = await stock();
  const body = { board: 'plover', boards, reserve: true, spares: false };
  const { build } = await bodyOf<Acted>(http.act('/api/kits', body), 201);
  await fn(build, async (bag) => (await kit(build)).takes.find((take) => take.bag === bag) ?? assert.fail(`no take of ${bag}`));
  if (['reserved', 'picking'].includes((await kit(build)).build.state))
    await bodyOf(http.act(`/api/kits/${build}/cancel`, {}), 201);
  assert.deepEqual(await stock(), before);
  assert.deepEqual(await http.lab.read(checkLab), []);
}

void test('a kit says what lies where, what it needs, what it lacks, and what was done with it', () =>
  withKit(4, async (build, takeOf) => {
    const { takes, lines, acts } = await kit(build);
    assert.deepEqual(
      takes.map(({ bag, unit, planned, spare, box, said }) => [
        bag,
        unit,
        planned,
        spare,
        box,
        said.name.replaceAll('\u202f', ' '),
      ]),
      [
        [1, 'piece', 8, 0, 'A', '10 µF 25 V X7R'],
        [2, 'piece', 4, 0, 'A', '4.7 kΩ ±1 %'],
        [3, 'piece', 12, 0, 'B', '10 kΩ ±1 %'],
      ],
    );
    assert.deepEqual(
      lines.map(({ refs, need, short }) => [refs.length, need, short]),
      [
        [2, 8, 0],
        [1, 4, 0],
        [3, 12, 0],
      ],
    );
    assert.deepEqual(
      acts.map(({ kind }) => kind),
      ['reserved'],
    );
    const two = await takeOf(2);
    const short = await bodyOf<Acted>(pick(build, { picks: [{ take: two.id, quantity: 3, short: true }] }), 201);
    const after = await kit(build);
    assert.deepEqual(
      after.lines.map(({ short: lacks }) => lacks),
      [0, 1, 0],
    );
    assert.deepEqual(
      after.acts.map(({ kind, takes: of, pieces, undoneBy }) => [kind, of, pieces, undoneBy]),
      [
        ['picked-for-build', [two.id], 3, null],
        ['reserved', [], 0, null],
      ],
    );
    await undo(short.id);
    const [taken, first] = (await kit(build)).acts;
    assert.deepEqual([taken?.undoes, taken?.takes, first?.undoneBy], [short.id, [two.id], taken?.act]);
  }));

void test('all in a box as planned is one act, taken back by one', () =>
  withKit(3, async (build) => {
    const { takes } = await kit(build);
    const box = takes
      .filter((take) => take.box === 'A')
      .map(({ id, planned, picked }) => ({ take: id, quantity: planned - picked, saw: picked }));
    const done = await bodyOf<Acted>(pick(build, { picks: box }), 201);
    assert.deepEqual([done.picked, done.open], [9, 1]);
    assert.deepEqual((await kit(build)).acts[0]?.takes.toSorted(), box.map(({ take }) => take).toSorted());
    await undo(done.id);
    assert.equal((await kit(build)).build.state, 'reserved');
  }));

void test('more than planned is booked and said; more than is in the bag only from the hand', () =>
  withKit(3, async (build, takeOf) => {
    const { id: take } = await takeOf(1);
    const over = await bodyOf<Acted>(pick(build, { picks: [{ take, quantity: 9 }] }), 201);
    assert.match(over.warnings[0]?.text ?? '', /^Cell \d of tray 1 wants 6 from bag 1 and has 9 now/);
    assert.equal((await takeOf(1)).picked, 9);
    await undo(over.id);
    const refused = await pick(build, { picks: [{ take, quantity: 45 }] });
    assert.deepEqual([refused.status, refused.body['code'], refused.body['bag']], [409, 'not-enough', 1]);
    const hand = await bodyOf<Acted>(pick(build, { picks: [{ take, quantity: 45 }], inHand: true }), 201);
    assert.ok(hand.warnings.some(({ code }) => code === 'on-count-list'));
    await undo(hand.id);
  }));

void test('fewer lets the rest go; none at all wants to be said', () =>
  withKit(3, async (build, takeOf) => {
    const { id: take, cell } = await takeOf(2);
    const nothing = await pick(build, { picks: [{ take, quantity: 0 }] });
    assert.deepEqual([nothing.status, nothing.body['bag'], nothing.body['cell']], [422, 2, cell]);
    assert.match(String(nothing.body['detail']), /^Nothing was taken from bag 2 for cell \d of tray 1\. Leave it open, or say/);
    const none = await bodyOf<Acted>(pick(build, { picks: [{ take, quantity: 0, short: true }] }), 201);
    assert.deepEqual([none.picked, none.open], [0, 2]);
    assert.deepEqual([(await takeOf(2)).state, (await kit(build)).acts[0]?.takes], ['done', [take]]);
    await undo(none.id);
    assert.equal((await takeOf(2)).state, 'open');
  }));

void test('what is enough closes its stop, and nothing is said against the bag; a bag that gave no more is to be counted', () =>
  withKit(3, async (build, takeOf) => {
    const { id: take } = await takeOf(3);
    const toCount = async (): Promise<boolean> => (await bodyOf<{ toCount: boolean }>(http.get('/api/bags/3'))).toCount;
    const enough = await bodyOf<Acted>(pick(build, { picks: [{ take, quantity: 7, enough: true }] }), 201);
    assert.deepEqual([enough.picked, enough.open, enough.warnings, await toCount()], [7, 2, [], false]);
    assert.deepEqual([(await takeOf(3)).state, (await stock())[2]], ['done', [43, 43]]);
    await undo(enough.id);
    assert.deepEqual([(await takeOf(3)).state, (await stock())[2]], ['open', [50, 41]]);
    await bodyOf(pick(build, { picks: [{ take, quantity: 7 }] }), 201);
    const more = await bodyOf<Acted>(pick(build, { picks: [{ take, quantity: 0, enough: true }] }), 201);
    assert.deepEqual([more.picked, more.open, await toCount()], [0, 2, false]);
    const short = await bodyOf<Acted>(pick(build, { picks: [{ take: (await takeOf(1)).id, quantity: 1, short: true }] }), 201);
    assert.deepEqual(
      short.warnings.map(({ code }) => code),
      ['on-count-list'],
    );
    await undo(short.id);
  }));

void test('of two who pick one stop the second is told, and nothing of its pick is booked', () =>
  withKit(3, async (build, takeOf) => {
    const [one, two] = [await takeOf(1), await takeOf(2)];
    const of = ({ id, planned, picked }: KitTakeView): object => ({ take: id, quantity: planned, saw: picked });
    const [first, second] = await Promise.all([pick(build, { picks: [of(one)] }), pick(build, { picks: [of(one), of(two)] })]);
    const late = [first, second].find(({ status }) => status === 409);
    assert.deepEqual([first.status + second.status, late?.body['code'], late?.body['bag']], [610, 'picked-meanwhile', 1]);
    assert.match(
      String(late?.body['detail']),
      /^Bag 1 was picked for cell \d of tray 1 meanwhile: 6 lie there, and 0 were known here/,
    );
    assert.equal((await takeOf(1)).picked, 6);
    const again = await bodyOf<Acted>(pick(build, { picks: [{ take: one.id, quantity: 1 }] }), 201);
    assert.ok(again.warnings.some(({ code }) => code === 'picked-again'));
  }));

void test('a stop says what is to be minded with its part, by the facts of the part', async () => {
  await bodyOf(http.act('/api/bags', { says: 'fuse T2A 250V 5x20', quantity: 9, bag: 9 }), 201);
  await bodyOf(http.upload(`/api/boards?name=fused.csv&id=${randomUUID()}`, 'Reference,Value\nF1,fuse T2A 250V 5x20\n'), 201);
  const body = { board: 'fused', boards: 1, reserve: true, spares: false, anyway: true };
  const { build } = await bodyOf<Acted>(http.act('/api/kits', body), 201);
  assert.deepEqual(
    (await kit(build)).takes.map(({ bag, cautions }) => [bag, cautions]),
    [[9, ['fuses']]],
  );
  await bodyOf(http.act(`/api/kits/${build}/cancel`, {}), 201);
});

void test('boards are not finished while stops are open, unless it is said how many were made', () =>
  withKit(3, async (build, takeOf) => {
    const { id: take } = await takeOf(1);
    await bodyOf(pick(build, { picks: [{ take, quantity: 6 }] }), 201);
    const finish = (body: object): Promise<HttpTold> => http.act(`/api/kits/${build}/finish`, body);
    const refused = await finish({});
    assert.deepEqual([refused.status, refused.body['code'], refused.body['bags']], [409, 'takes-open', '2, 3']);
    assert.match(String(refused.body['detail']), /^2 stops of 'plover[^']*' are not picked yet \(bags 2, 3\)\. Pick what lies/);
    const made = await bodyOf<Acted>(finish({ made: 2 }), 201);
    assert.ok(made.warnings.some(({ code }) => code === 'short-lines'));
    const late = await pick(build, { picks: [{ take, quantity: 1 }] });
    assert.match(String(late.body['detail']), /'plover[^']*' is built; .* If the boards are not made, take that back first\./);
    await undo(made.id);
  }));

void test('no more comes back than is out, cell by cell; all comes back when the build is given up', () =>
  withKit(3, async (build, takeOf) => {
    const picked = await bodyOf<Acted>(pick(build, {}), 201);
    const { id: take } = await takeOf(3);
    const leftovers = (quantity: number): Promise<HttpTold> =>
      http.act(`/api/kits/${build}/leftovers`, { returns: [{ take, quantity }] });
    const refused = await leftovers(10);
    assert.deepEqual([refused.status, refused.body['code'], refused.body['bag']], [422, 'out-of-range', 3]);
    assert.match(String(refused.body['detail']), /^Of bag 3, 9 are out in cell \d of tray 1, so 10 can't go back\. Put back 9/);
    const back = await bodyOf<Acted>(leftovers(2), 201);
    assert.match(
      String((await http.act('/api/undo', { act: picked.id })).body['detail']),
      /returned since\. Undo the return first/,
    );
    await undo(back.id);
    const given = await bodyOf<Acted & { returned: number }>(http.act(`/api/kits/${build}/cancel`, {}), 201);
    assert.equal(given.returned, 18);
    await undo(given.id);
    assert.deepEqual([(await kit(build)).build.state, (await takeOf(3)).picked], ['picking', 9]);
  }));

void test('what should be left over but was lost is said by a return of 0; said of other boards made it is asked again', () =>
  withKit(3, async (build, takeOf) => {
    const { takes } = await kit(build);
    const picks = takes.map(({ id, planned }) => ({ take: id, quantity: planned + 2 }));
    const picked = await bodyOf<Acted>(pick(build, { picks }), 201);
    const [one, two, three] = [await takeOf(1), await takeOf(2), await takeOf(3)];
    const back = (...returns: (readonly [KitTakeView, number])[]): Promise<HttpTold> =>
      http.act(`/api/kits/${build}/leftovers`, { returns: returns.map(([{ id }, quantity]) => ({ take: id, quantity })) });
    const left = async (): Promise<unknown[]> => {
      const { build: own, takes: of } = await kit(build);
      const { builds } = await bodyOf<{ builds: { id: string; left: number }[] }>(http.get('/api/kits'));
      const listed = builds.find(({ id }) => id === build)?.left;
      assert.equal(own.left, listed);
      return [listed, ...of.map(({ expected, settled }) => [expected, settled])];
    };
    assert.equal((await back([one, 0])).body['code'], 'nothing-to-do');
    const made = await bodyOf<Acted>(http.act(`/api/kits/${build}/finish`, { made: 3 }), 201);
    const some = await bodyOf<Acted>(back([one, 2], [two, 1]), 201);
    assert.deepEqual(await left(), [3, [0, false], [1, false], [2, false]]);
    const before = await stock();
    const lost = await bodyOf<Acted & { returned: number }>(back([two, 0], [three, 0]), 201);
    assert.deepEqual([lost.returned, await stock()], [0, before]);
    assert.deepEqual(await left(), [0, [0, false], [0, true], [0, true]]);
    await undo(made.id);
    const fewer = await bodyOf<Acted>(http.act(`/api/kits/${build}/finish`, { made: 2 }), 201);
    assert.deepEqual(await left(), [9, [2, false], [2, false], [5, false]]);
    await undo(fewer.id);
    const again = await bodyOf<Acted>(http.act(`/api/kits/${build}/finish`, { made: 3 }), 201);
    assert.deepEqual(await left(), [0, [0, false], [0, true], [0, true]]);
    await undo(lost.id);
    assert.deepEqual(await left(), [3, [0, false], [1, false], [2, false]]);
    for (const act of [some, again, picked]) await undo(act.id);
  }));

void test('a build that is only planned has no stops yet, and its lines as its board is now', async () => {
  const { build } = await bodyOf<Acted>(http.act('/api/kits', { board: 'plover', boards: 25, keep: true }), 201);
  const { takes, lines, acts, build: view } = await kit(build);
  assert.deepEqual([view.state, takes], ['planned', []]);
  assert.deepEqual(
    lines.map(({ need, short }) => [need, short]),
    [
      [50, 10],
      [25, 0],
      [75, 25],
    ],
  );
  assert.deepEqual(
    acts.map(({ kind }) => kind),
    ['planned'],
  );
  const reserved = await bodyOf<Acted>(http.act(`/api/kits/${build}/reserve`, {}), 201);
  assert.deepEqual(
    (await kit(build)).acts.map(({ kind }) => kind),
    ['reserved', 'planned'],
  );
  await undo(reserved.id);
  assert.deepEqual(
    (await kit(build)).acts.map(({ kind }) => kind),
    ['reserved', 'reserved', 'planned'],
  );
  await bodyOf(http.act(`/api/kits/${build}/cancel`, {}), 201);
});

void test('where nothing can be built nothing is promised, unless it is meant; what is fitted later does not stand in the way', async () => {
  const bom = `${BOM}U1,LM358DR,SOIC-8\n`;
  await bodyOf(http.upload(`/api/boards?name=avocet.csv&id=${randomUUID()}`, bom), 201);
  const wish = { board: 'avocet', boards: 2, reserve: true, spares: false };
  const refused = await http.act('/api/kits', wish);
  assert.deepEqual([refused.status, refused.body['code']], [409, 'nothing-made']);
  assert.match(String(refused.body['detail']), /^Not one of 2 boards can be built .* Its lines say what is missing/);
  const anyway = await bodyOf<Acted & KitAnswer>(http.act('/api/kits', { ...wish, anyway: true }), 201);
  assert.deepEqual([anyway.buildable, (await kit(anyway.build)).lines.map(({ short }) => short)], [0, [0, 0, 0, 2]]);
  await undo(anyway.id);
  const { lines } = await bodyOf<{ lines: { demand: string }[] }>(http.get('/api/boards/avocet/lines'));
  await bodyOf(http.act('/api/boards/avocet/later', { demand: lines[3]?.demand, later: true }), 201);
  const reserved = await bodyOf<Acted & KitAnswer>(http.act('/api/kits', wish), 201);
  assert.deepEqual([reserved.buildable, (await kit(reserved.build)).takes.length], [2, 3]);
  await undo(reserved.id);
});
