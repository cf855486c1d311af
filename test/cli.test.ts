import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, suite, test } from 'node:test';
import { COMMANDS } from '#cli/command-list.ts';
import { jsonLines, runCli, type Ran } from './cli-child.ts';

const folder = mkdtempSync(join(tmpdir(), 'bagatelle-cli-'));
after(() => rmSync(folder, { recursive: true }));

const LIST = `Bag,Qty,Description,Supplier
1,120,4k7 1% 0805 resistor,Quayside
2,88,2k2 5% 0603 resistor,Quayside
3,200,100n 50V X7R 0805 capacitor,Quayside
4,40,1u 16V X7R 0805 capacitor,
`;
const BOM = `Reference,Qty,Value,Footprint
"R1, R2",2,4k7,R_0805
C1,1,100n 50V X7R,C_0805
C2,1,1u 16V X7R,C_0805
U9,1,QX7731-ZZ,SOIC-8
`;

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const home = (name: string): string => join(folder, name);
const list = file('stock.csv', LIST);
const bom = file('blinker.csv', BOM);

/** A command that has to end well; its answer. */
async function good(lab: string, ...args: string[]): Promise<Ran> {
  const ran = await runCli(lab, args);
  assert.equal(ran.status, 0, `bagatelle ${args.join(' ')}: ${ran.said}`);
  assertNoStack(ran);
  return ran;
}

/** A command that has to be refused: exit 1, one line that says why, nothing on stdout, nothing changed. */
async function refused(lab: string, args: readonly string[], why: RegExp): Promise<void> {
  const ran = await runCli(lab, args);
  assert.equal(ran.status, 1, `bagatelle ${args.join(' ')}: ${ran.out}${ran.said}`);
  assert.match(ran.said, why);
  assert.equal(ran.said.trimEnd().split('\n').length, 1, `one line: ${ran.said}`);
  assert.equal(ran.out, '');
  assertNoStack(ran);
}

function assertNoStack({ out, said }: Ran): void {
  assert.doesNotMatch(out + said, /^\s+at .*[/\\:]\d+/m, 'no stack trace');
  assert.doesNotMatch(said, /fault of Bagatelle/);
}

const onHand = async (lab: string, bag: number): Promise<unknown> => {
  const [found] = jsonLines((await good(lab, 'bag', String(bag), '--json')).out);
  return found && typeof found === 'object' && 'onHand' in found ? found.onHand : null;
};

interface MatchedLine {
  readonly row: number;
  readonly need: number;
  readonly short: number;
  readonly spare: number;
  readonly bags: readonly { readonly take: number }[];
}

// two at once: most of the time goes into starting processes
void suite('commands in processes of their own', { concurrency: 2 }, () => {
  void test('every command has a help with its usage and an example of itself', async () => {
    for (const [name, load] of Object.entries(COMMANDS)) {
      const { command } = await load();
      assert.equal(command.name, name);
      assert.ok(command.summary.endsWith('.'), name);
      assert.match(command.usage, new RegExp(`^bagatelle ${name}\\b`));
      assert.match(command.example, new RegExp(`bagatelle ${name}\\b`));
    }
    const lab = home('help');
    const { out } = await good(lab, 'help');
    for (const name of Object.keys(COMMANDS)) assert.match(out, new RegExp(`^  ${name} `, 'm'));
    assert.match((await good(lab, 'pick', '--help')).out, /Example:\n {2}bagatelle pick 12 3/);
  });

  void test('wrong usage ends with 2 and names what was meant', async () => {
    const lab = home('usage');
    for (const [args, why] of [
      [['mtach', bom], /no command 'mtach'.*Did you mean 'match'/],
      [['match', bom, '--bords', '2'], /no option --bords.*Did you mean --boards/],
      [['pick', '1'], /missing: BAG and QUANTITY/],
      [['count', '1', '2', '3'], /what '3' is for/],
      [['undo'], /missing: ACT/],
      [['serve', '--host', '0.0.0.0'], /no option --host/],
    ] as const) {
      const ran = await runCli(lab, args);
      assert.equal(ran.status, 2, args.join(' '));
      assert.match(ran.said, why);
      assert.equal(ran.out, '');
    }
  });

  void test('a list comes in by one act, dry first, and goes out by one undo', async () => {
    const lab = home('import');
    const dry = await good(lab, 'import', list, '--dry-run', '--json');
    assert.deepEqual(
      jsonLines(dry.out).map((bag) => (bag as { bag: number }).bag),
      [1, 2, 3, 4],
    ); // as: the contract of --json
    await refused(lab, ['bag', '1'], /There is no bag 1/);
    assert.match((await good(lab, 'import', list, '--box', 'A')).out, /4 bags made \(1–4\)/);
    await refused(lab, ['import', list], /Bag number 1 is taken \(row 2\)/);
    assert.equal(await onHand(lab, 1), 120);
    await good(lab, 'undo', '--last');
    await refused(lab, ['bag', '1'], /There is no bag 1/);
    await good(lab, 'import', list);
    assert.match((await good(lab, 'check')).said, /sound/);
  });

  void test('what is doubtful in a file is said by every command that reads it, and a column that is not there is wrong usage', async () => {
    const lab = home('doubts');
    const shelf = file('shelf.csv', 'Bag;Box;Fach;What is in it;Menge\n12;B;7;4k7 1% 0805;1.500\n13;B;8;Elko 4,7 µF 50V;50-60\n');
    const dry = await good(lab, 'import', shelf, '--dry-run');
    assert.match(dry.said, /3 'Fach' = place \(by its header\), 4 'What is in it' = description \(by its cells\)/);
    assert.match(dry.said, /row 3, quantity: .*50-60/);
    await good(lab, 'import', shelf);
    assert.match((await good(lab, 'bag', '12')).out, /box B, place 7[^]*1500 on hand/);
    const twenty = file('twenty.csv', 'Ref,Qty,Description\nR1,20,4k7 1% 0805\n');
    const [line] = jsonLines((await good(lab, 'match', twenty, '--json')).out);
    const { because } = line as { because: { code: string }[] }; // as: the contract of --json
    assert.equal(because[0]?.code, 'quantity-not-refs');
    for (const [command, ...more] of [['match'], ['kit'], ['save', '--name', 'Twenty']] as const)
      assert.match((await good(lab, command, twenty, ...more)).said, /row 2: quantity: The quantity is 20/);
    for (const command of ['read', 'import', 'match', 'kit', 'save']) {
      const ran = await runCli(lab, [command, twenty, '--columns', 'Amount=quantity']);
      assert.equal(ran.status, 2, command);
      assert.match(ran.said, /no column 'amount'.*1 'Ref', 2 'Qty', 3 'Description'/);
    }
  });

  void test('single bags: received, found, picked, returned, counted, astray and found again, undone', async () => {
    const lab = home('bags');
    const received = await good(
      lab,
      'receive',
      '100 4k7 1% 0805',
      '~50 100n X7R 50V 0603',
      '--box',
      'B',
      '--from',
      'Quayside',
      '--json',
    );
    assert.match(received.out, /"bag":1,"onHand":100,"sure":100,"free":100/);
    assert.match(received.out, /"bag":2,"onHand":50,"sure":0,"free":0/);
    await good(lab, 'receive', '20', '--bag', '1');
    await good(lab, 'pick', '1', '30');
    await refused(lab, ['pick', '1', '300'], /Bag 1 has 90 on hand, 300 were asked.*hand/);
    await refused(lab, ['pick', '1', '-3'], /quantity must be at least 1, not -3/);
    await refused(lab, ['pick', '1', '2.5'], /quantity must be a whole number, not '2.5'/);
    await refused(lab, ['pick', 'one', '2'], /bag must be a whole number/);
    await refused(lab, ['receive', '5 2k2 0603', '--bag', '1'], /number 1 is taken/);
    await refused(lab, ['receive', '4k7 0805'], /quantity first/);
    const inHand = await good(lab, 'pick', '1', '95', '--in-hand');
    assert.match(inHand.said, /count list/);
    await good(lab, 'return', '1', '4');
    await good(lab, 'count', '1', '6');
    assert.equal(await onHand(lab, 1), 6);
    await good(lab, 'undo', '--last');
    assert.equal(await onHand(lab, 1), 4);
    await good(lab, 'astray', '2');
    assert.match((await good(lab, 'find', '100n')).out, /not found/);
    await good(lab, 'found', '2');
    const [found] = jsonLines((await good(lab, 'find', '4k7', '0805', '--json')).out);
    assert.deepEqual(Object.keys(found as object), ['bag', 'box', 'code', 'text', 'onHand', 'free', 'why']); // as: the contract of --json
    assert.match((await good(lab, 'boxes')).out, /^B +\d+ +2/m);
    assert.match((await good(lab, 'history', '--limit', '2')).out, /bag marked/);
  });

  void test('the same id again is counted once, with another body refused', async () => {
    const lab = home('repeat');
    await good(lab, 'receive', '10 M3 x 8 screw');
    const id = '3f1e7a52-90c4-4c1b-8f57-0d2f6f0f9a11';
    await good(lab, 'pick', '1', '2', '--id', id);
    assert.match((await good(lab, 'pick', '1', '2', '--id', id)).said, /not.* twice|nothing was done twice/);
    await refused(lab, ['pick', '1', '3', '--id', id], /used for something else/);
    assert.equal(await onHand(lab, 1), 8);
  });

  void test('kits are planned beside the builds that are kept as planned, the first served first', async () => {
    const lab = home('planned');
    const small = file('small.csv', 'Reference,Value,Footprint\n"C1, C2",1u 16V X7R,C_0805\n');
    await good(lab, 'import', list);
    assert.match((await good(lab, 'kit')).said, /No build is planned/);
    const kept = await good(lab, 'kit', small, '--boards', '15', '--due', '2026-12-01', '--keep', '--json');
    assert.match(kept.said, /Board 'small', revision 1[\s\S]*'small' \([0-9a-f]{8}\) is kept as planned/);
    await good(lab, 'kit', small, '--boards', '3', '--keep', '--name', 'later');
    assert.match(
      (await good(lab, 'boards', '--json')).out,
      /"revisions":\[\{[^}]*\}\]/,
      'the same lines make no second revision',
    );
    assert.equal((await good(lab, 'kit')).out, 'small, 15 boards, due 2026-12-01: 15 of 15\nlater, 3 boards: 3 of 3\n');
    const asked = await good(lab, 'kit', small, '--boards', '5', '--no-spares');
    assert.match(asked.out, /promised to small[\s\S]*2 of 5 boards can be built[\s\S]*first served first:\nsmall, 15 boards/);
    const urgent = jsonLines((await good(lab, 'kit', small, '--boards', '5', '--priority', '1', '--json')).out)[0];
    const others = (urgent as { others: { name: string; buildable: number }[] }).others; // as: the contract of kit
    assert.deepEqual(
      others.map(({ name, buildable }) => [name, buildable]),
      [
        ['small', 15],
        ['later', 0],
      ],
    );
    assert.equal(jsonLines((await good(lab, 'kit', small, bom, '--json')).out).length, 2);
    await good(lab, 'kit', '--build', 'later', '--reserve', '--no-spares');
    assert.match((await good(lab, 'builds')).out, /planned[\s\S]*reserved/);
    await refused(lab, ['kit', '--build', 'later'], /'later' is reserved; this can be done only while it is planned/);
    await good(lab, 'cancel', 'small');
    assert.match((await good(lab, 'kit')).said, /No build is planned/);
    await refused(lab, ['kit', small, '--due', 'soon'], /due must be a date as YYYY-MM-DD/);
    assert.equal((await runCli(lab, ['kit', small, '--keep', '--reserve'])).status, 2);
    assert.match((await good(lab, 'check')).said, /sound/);
  });

  void test('a BOM is read, matched, planned, reserved, picked, finished and what is left goes back', async () => {
    const lab = home('job');
    await good(lab, 'import', list, '--box', 'A');
    const rows = jsonLines((await good(lab, 'read', bom, '--json')).out);
    assert.deepEqual(Object.keys(rows[0] as object), [
      'row',
      'refs',
      'quantity',
      'fitted',
      'part',
      'location',
      'supplier',
      'doubts',
    ]); // as: the contract
    const lines = jsonLines((await good(lab, 'match', bom, '--boards', '3', '--json')).out) as MatchedLine[]; // as: the contract of match
    assert.deepEqual(
      lines.map(({ row, need, short }) => [row, need, short]),
      [
        [2, 6, 0],
        [3, 3, 0],
        [4, 3, 0],
        [5, 3, 3],
      ],
    );
    for (const line of lines)
      assert.equal(
        line.bags.reduce((sum, { take }) => sum + take, 0),
        line.need - line.short + line.spare,
      );
    const kit = JSON.parse((await good(lab, 'kit', bom, '--boards', '3', '--json')).out) as object; // as: the contract of kit
    assert.deepEqual(Object.keys(kit), [
      'boards',
      'buildable',
      'buildableWithChecks',
      'limitedBy',
      'proof',
      'gap',
      'lines',
      'route',
      'others',
    ]);
    assert.equal(jsonLines((await good(lab, 'builds', '--json')).out).length, 0, 'nothing is written without --reserve');
    await refused(lab, ['kit', bom, '--boards', '3', '--reserve'], /Not one of 3 boards.*--anyway/);
    await good(lab, 'kit', bom, '--boards', '3', '--reserve', '--anyway');
    assert.match((await good(lab, 'builds', 'blinker')).out, /The walk[\s\S]*R1–R2[\s\S]*The trays/);
    await good(lab, 'pick', '--build', 'blinker');
    await good(lab, 'finish', 'blinker', '--made', '2');
    assert.match((await good(lab, 'return', '--build', 'blinker')).out, /expected/);
    await good(lab, 'return', '--build', 'blinker', '--expected');
    assert.equal(await onHand(lab, 1), 120 - 4);
    await good(lab, 'kit', bom, '--reserve', '--anyway', '--name', 'second');
    await good(lab, 'cancel', 'second');
    assert.match((await good(lab, 'check')).said, /sound/);
  });

  void test('a board is kept, and a bag is taken by hand for one of its lines', async () => {
    const lab = home('boards');
    await good(lab, 'import', list);
    await good(lab, 'save', bom, '--name', 'Blinker');
    assert.match((await good(lab, 'boards')).out, /Blinker +1 +4/);
    await refused(lab, ['choose', 'Blinker', '5', '4'], /does not serve for row 5: .*--reason TEXT/);
    await good(lab, 'choose', 'Blinker', '5', '4', '--reason', 'tried at the bench');
    assert.match((await good(lab, 'match', 'Blinker')).out, /5 .*4 × 1.*because “tried at the bench”/);
    assert.match(
      (await good(lab, 'match', 'Blinker', '--row', '5')).out,
      /^Row 5, .* needed\.\n {2}bag 4 .*\n {4}bag 4 was chosen/,
    );
    assert.match((await good(lab, 'history')).out, /bag chosen by hand/);
    await good(lab, 'choose', 'Blinker', '5', '--none');
    assert.match((await good(lab, 'choose', 'Blinker', '5', '--later')).out, /left off for now/);
    assert.match((await good(lab, 'match', 'Blinker')).out, /5 .* 0 +fit later /);
    assert.match((await good(lab, 'match', 'Blinker', '--row', '5')).out, /^Row 5, .*Left off for now\./);
    await refused(lab, ['choose', 'Blinker', '5', '--later'], /nothing to do/);
    await good(lab, 'choose', 'Blinker', '5', '--fit');
    assert.doesNotMatch((await good(lab, 'match', 'Blinker')).out, /fit later/);
    await refused(lab, ['match', 'No such board'], /no board 'No such board'/);
  });

  void test('boards are whole numbers in their range, named by their option', async () => {
    const lab = home('ranges');
    for (const boards of ['0', '1e9']) await refused(lab, ['match', bom, '--boards', boards], /--boards must be from 1 to/);
    for (const boards of ['1000000000', '-1']) await refused(lab, ['kit', bom, '--boards', boards], /--boards must be from 1 to/);
    await refused(lab, ['kit', bom, '--boards', '1.5'], /--boards must be a whole number/);
  });

  void test('a file that is no list is refused in one line that names it, and changes nothing', async () => {
    const lab = home('files');
    const png = Uint8Array.from([
      0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52, 0, 0, 1, 0,
    ]);
    const bad: readonly (readonly [string, string | Uint8Array, RegExp])[] = [
      ['empty.csv', '', /empty\.csv/],
      ['picture.csv', png, /picture\.csv/],
      ['nul.csv', `Reference,Value\nR1,4k7\0\0\0\n`, /nul\.csv/],
      ['prose.csv', 'Dear all, the workshop is closed on Friday.\n', /prose\.csv/],
      [
        'wide.csv',
        `${Array.from({ length: 3000 }, (_, at) => `c${at}`).join(',')}\n${'1,'.repeat(2999)}1\n`,
        /wide\.csv.*row 1.*columns/,
      ],
      ['long.csv', `Reference,Value\nR1,${'x'.repeat(3_000_000)}\n`, /long\.csv.*row 2.*column 2/],
      ['refs.csv', 'Reference,Value\nR1-R999999999,4k7\n', /refs\.csv.*row 2/],
      ['negative.csv', 'Reference,Qty,Value\nR1,-4,4k7\n', /negative\.csv.*row 2/],
    ];
    for (const [name, content, why] of bad) {
      const path = file(name, content);
      await refused(lab, ['import', path], why);
    }
    await refused(lab, ['read', join(folder, 'negative.csv'), '--json'], /negative\.csv.*row 2/);
    await refused(lab, ['match', join(folder, 'nowhere.csv')], /nowhere\.csv/);
    await refused(lab, ['read', folder], /no file/);
    assert.match((await good(lab, 'history')).said, /Nothing was done/);
  });

  void test('a backup fills an empty lab again, an export is a list again, and no file is written over', async () => {
    const lab = home('whole');
    await good(lab, 'import', list, '--box', 'A');
    await good(lab, 'pick', '1', '20');
    const [dump, csv] = [join(folder, 'whole.jsonl'), join(folder, 'whole.csv')];
    await good(lab, 'backup', dump);
    await good(lab, 'export', csv);
    await refused(lab, ['backup', dump], /not there yet/);
    await refused(lab, ['restore', dump], /already holds something/);
    const again = home('again');
    const cooked = join(folder, 'cooked.jsonl');
    writeFileSync(cooked, readFileSync(dump, 'utf8').replace(/"delta":(\d+)/, '"delta":1$1'));
    await refused(again, ['restore', cooked], /backup/);
    await refused(again, ['restore', join(folder, 'no-such-file')], /no-such-file/);
    assert.match((await good(again, 'restore', dump)).said, /sound/, 'what was refused left nothing');
    assert.equal(await onHand(again, 1), 100);
    await refused(home('none'), ['restore', csv], /backup/);
    const third = home('third');
    await good(third, 'import', csv);
    assert.equal(await onHand(third, 3), 200);
    assert.equal(readFileSync(csv, 'utf8').split('\n').length, 6);
  });

  void test('a broken data folder and a folder inside the program are refused in one line', async () => {
    await refused(join(import.meta.dirname, 'inside'), ['find', 'x'], /inside the program/);
  });
});
