import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { after, test } from 'node:test';
import { runCli } from '#test/cli-child.ts';

/** What README.md shows is what a person sees: every `$ bagatelle …` is run, in its order, in one demo lab. */
const README = readFileSync(join(dirname(import.meta.dirname), 'README.md'), 'utf8');
const home = mkdtempSync(join(tmpdir(), 'bagatelle-readme-'));
after(() => rmSync(home, { recursive: true, force: true }));

interface Shown {
  readonly command: string;
  /** lines of what is printed: `…` for any lines, at the end of one for the rest of it */
  readonly lines: readonly string[];
}

function shownIn(text: string): Shown[] {
  const blocks = [...text.matchAll(/^```console\n([\s\S]*?)^```/gm)].map(([, block = '']) => block);
  return blocks.flatMap((block) =>
    block
      .split(/^\$ /m)
      .filter(Boolean)
      .map((one) => {
        const [command = '', ...lines] = one.trimEnd().split('\n');
        return { command, lines: lines.filter((line) => line !== '' && line !== '…') };
      }),
  );
}

/** Words of a command as a shell cuts them: blanks part, quotes hold together. */
function wordsOf(command: string): string[] {
  return [...command.matchAll(/'([^']*)'|"([^"]*)"|(\S+)/g)].map(([, single, double, plain]) => single ?? double ?? plain ?? '');
}

/** Ids are given by chance, times by the clock, and lines end where they end. */
function steady(text: string): string[] {
  return text.split('\n').map((line) =>
    line
      .replaceAll(/\b[0-9a-f]{8}\b/g, 'xxxxxxxx')
      .replaceAll(/\d+(?:\.\d+)? s\b/g, '0 s')
      .trimEnd(),
  );
}

function answers(printed: string, shown: string): boolean {
  const [line = ''] = steady(shown);
  return printed === line || (line.endsWith('…') && printed.startsWith(line.slice(0, -1).trimEnd()));
}

void test('every command of the README ends as it says and prints the lines that it shows', async () => {
  const shown = shownIn(README);
  assert.ok(shown.length > 8, `${shown.length} commands`);
  const filled = await runCli(home, ['demo']);
  assert.equal(filled.status, 0, filled.said);
  for (const { command, lines } of shown) {
    const [program, ...args] = wordsOf(command);
    assert.equal(program, 'bagatelle', command);
    const { out, said } = await runCli(home, args);
    const printed = steady(`${out}\n${said}`);
    for (const line of lines)
      assert.ok(
        printed.some((one) => answers(one, line)),
        `bagatelle ${args.join(' ')} did not print\n${line}\nbut\n${out}${said}`,
      );
  }
});
