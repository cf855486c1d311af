import type { Outcome } from '#core/stock/refusal.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { columnChoice, COLUMNS_OPTION } from '../column-words.ts';
import { defineCommand, ENDED, refused, wrongUsage } from '../command.ts';
import { tellInShort, tellKits, writeKits, type Shown } from '../kit-answers.ts';
import { keepWord, planKept, planWords, readWanted, reserveKept, reserveWord, type KitCall } from '../kit-asked.ts';
import { withLab } from '../lab.ts';
import { namedBuild } from '../named-build.ts';
import { withProgress } from '../progress.ts';
import { WRITE_OPTIONS } from '../write-act.ts';

export const command = defineCommand({
  name: 'kit',
  summary:
    'Plan a kit beside all planned builds: which bags give how many, the walk, the trays. Kept only with --keep or --reserve.',
  usage:
    'bagatelle kit BOM [--boards N] [--priority P] [--due DATE] [--keep | --reserve] [--name NAME] [--no-spares]\nbagatelle kit      (what every planned build gets)\nbagatelle kit --build BUILD [--reserve]      (a planned build)',
  example: 'bagatelle kit blinker.csv --boards 3 --reserve',
  options: {
    boards: { type: 'word', value: 'N', say: 'so many boards: 1 unless said' },
    priority: { type: 'word', value: 'P', say: 'small comes first: 5 unless said' },
    due: { type: 'word', value: 'YYYY-MM-DD', say: 'of equal priority, the earlier date comes first' },
    keep: { type: 'switch', say: 'keep it as a planned build: every plan reckons with it, nothing is promised' },
    reserve: { type: 'switch', say: 'promise the bags to this build' },
    anyway: { type: 'switch', say: 'with --reserve: promise the pieces even where not one board can be built' },
    build: { type: 'word', value: 'BUILD', say: 'a build that was kept as planned' },
    name: { type: 'word', value: 'NAME', say: 'name of the build: that of the BOM unless said' },
    columns: COLUMNS_OPTION,
    'no-spares': { type: 'switch', say: 'not a piece above the need' },
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const { keep, reserve, build } = options;
    if (keep && (reserve || build !== undefined)) return wrongUsage(cliText('keep-alone'));
    const [extra] = words;
    if (build !== undefined && extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    const one = build === undefined && (keep || reserve) ? oneWord(words, 'BOM') : null;
    if (one && !one.ok) return one.ending;
    const wanted = readWanted(options);
    if (!wanted.ok) return refused(wanted.refusal);
    const told = columnChoice(options.columns);
    if (!told.ok) return told.ending;
    return withLab(async (lab) => {
      const call = { lab, terminal, options, ...(told.value && { told: told.value }) };
      const planned = await withProgress(terminal, cliText('planning'), () => {
        if (build !== undefined) return ofBuild(call, build, reserve === true);
        if (!one) return planWords(call, words, wanted.value);
        return (keep ? keepWord : reserveWord)(call, one.value, wanted.value);
      });
      if (!planned.ok) return refused(planned.refusal);
      if (options.json) writeKits(terminal, planned.value);
      else if (words.length > 0 || build !== undefined) tellKits(terminal, planned.value);
      else if (planned.value.all.length > 0) tellInShort(terminal, planned.value.all);
      else terminal.say(cliText('none-planned'));
      return ENDED;
    });
  },
});

async function ofBuild(call: KitCall, word: string, reserve: boolean): Promise<Outcome<Shown>> {
  const kit = await namedBuild(call.lab, word);
  if (!kit.ok) return kit;
  const { id, name, state } = kit.value.build;
  if (reserve) return reserveKept(call, id);
  if (state !== 'planned') return { ok: false, refusal: { code: 'build-state', args: { build: name, state, wants: 'planned' } } };
  return planKept(call, id);
}
