import { styleText } from 'node:util';

type Style = Parameters<typeof styleText>[0];

/** Where a command writes: data to `out`, messages to `say`. */
export interface Terminal {
  /** one line of data on stdout */
  out(line: string): void;
  /** one line of message on stderr */
  say(line: string): void;
  /** rewrites the running line of progress on stderr; null clears it */
  status(line: string | null): void;
  /** the text of stdin, all of it */
  input(): Promise<string>;
  /** colours where stdout is a terminal that shows them */
  paint(style: Style, text: string): string;
  readonly columns: number;
  readonly interactive: boolean;
}

/** COLUMNS where it is set, else as wide as the terminal; what goes into a file or another program is never cut. */
export function widthOfTerminal(told: string | undefined, shown: number | undefined): number {
  const columns = Number(told);
  return Number.isInteger(columns) && columns > 0 ? columns : (shown ?? Number.POSITIVE_INFINITY);
}

async function readAll(stream: NodeJS.ReadStream): Promise<string> {
  const parts: string[] = [];
  stream.setEncoding('utf8');
  for await (const part of stream) parts.push(String(part));
  return parts.join('');
}

/** The process's own streams. */
export function processTerminal(): Terminal {
  const { stdin, stdout, stderr } = process;
  let running = false;
  const clear = (): void => {
    if (running) stderr.write('\r\u001B[2K');
    running = false;
  };
  return {
    out(line) {
      clear();
      stdout.write(`${line}\n`);
    },
    say(line) {
      clear();
      stderr.write(`${line}\n`);
    },
    status(line) {
      if (!stderr.isTTY) return;
      clear();
      if (line !== null) stderr.write(line);
      running = line !== null;
    },
    input: () => readAll(stdin),
    paint: (style, text) => styleText(style, text, { stream: stdout }),
    columns: widthOfTerminal(process.env['COLUMNS'], stdout.isTTY ? stdout.columns : undefined),
    interactive: stdout.isTTY && stdin.isTTY,
  };
}
