import { losesHalf, losesUnderBias } from '#core/part/dielectric.ts';
import { numberFact, wordFact, type Part } from '#core/part/part.ts';
import { compare, decimal } from '#core/quantity/decimal.ts';
import { finding, type Finding } from './finding.ts';
import { factText } from './fact-text.ts';
import { isChip } from './outline.ts';
import { OPEN_VOLTAGE_FLOOR } from './rules.data.ts';

const POLARISED = new Set(['electrolytic', 'aluminium', 'tantalum', 'polymer', 'niobium', 'supercap']);

/** Polarised or not, from what is said: the fact itself, the technology, a dielectric code, a chip size or a tantalum case; else null. */
export function polarised(part: Part): 'yes' | 'no' | null {
  const stated = wordFact(part, 'polarised');
  if (stated === 'yes' || stated === 'no') return stated;
  const technology = wordFact(part, 'technology');
  if (technology !== null) return POLARISED.has(technology) ? 'yes' : 'no';
  if (wordFact(part, 'dielectric') !== null || wordFact(part, 'safety') !== null) return 'no';
  const body = wordFact(part, 'package');
  if (body === null) return null;
  return /^EIA-/i.test(body) ? 'yes' : isChip(body) ? 'no' : null;
}

/** What only capacitors ask: polarity of the body, the kind of voltage, and a voltage or dielectric that the line leaves open. */
export function capacitorFindings(has: Part, asked: Part): Finding[] {
  return [
    ...polarity(has, asked),
    ...voltageKind(has, asked),
    ...openVoltage(has, asked),
    ...openDielectric(has, asked),
    ...byNumber(has, asked),
    ...biasNotCompared(has),
  ];
}

function polarity(has: Part, asked: Part): Finding[] {
  const [mine, wanted] = [polarised(has), polarised(asked)];
  const args = { has: mine ?? '', asked: wanted ?? '' };
  if (mine === wanted || (mine === 'no' && wanted === null)) return [];
  // where a code or a size says 'not polarised', the bag's silence on that is a finding of its own already
  if (wanted === 'no' && mine === null && !asked.facts.polarised) return [];
  return [finding(mine === 'yes' && wanted === 'no' ? 'missing' : 'check', 'polarised', args, 'polarised')];
}

/**
 * Direct, alternating and mains voltage are three ratings, and none answers for another (IEC 60384-14 tests for the mains what a plain
 * capacitor never undergoes; IEC 60384-1 rates the rest). A plain capacitor that states a voltage alone means direct voltage, as the trade
 * writes it; one of a class for the mains must say.
 */
function voltageKind(has: Part, asked: Part): Finding[] {
  const [mine, wanted] = [ratedKind(has), ratedKind(asked)];
  if (mine === null || wanted === null) return [];
  const args = { fact: 'voltage-kind', has: mine.kind, asked: wanted.kind };
  if (mine.kind === 'unsaid')
    return [finding('check', 'not-stated', { fact: 'voltage-kind', asked: wanted.kind.replace('unsaid', '') }, 'voltage-kind')];
  if (wanted.kind === 'unsaid') return [finding('check', 'not-asked', { fact: 'voltage-kind', has: mine.kind }, 'voltage-kind')];
  if (mine.kind !== wanted.kind)
    return [finding(fallsShort(mine.kind, wanted.kind) && mine.stated ? 'missing' : 'check', 'safety', args, 'voltage-kind')];
  if (mine.stated === wanted.stated) return mine.stated ? [finding('exact', 'same', args, 'voltage-kind')] : [];
  return [finding(mine.stated ? 'exact' : 'serves', 'dc-by-practice', { side: mine.stated ? 'asked' : 'has' }, 'voltage-kind')];
}

interface RatedKind {
  readonly kind: string;
  readonly stated: boolean;
}

function ratedKind(part: Part): RatedKind | null {
  const stated = wordFact(part, 'voltage-kind');
  if (stated !== null) return { kind: stated, stated: true };
  if (!part.facts.voltage) return null;
  return { kind: part.facts.safety ? 'unsaid' : 'dc', stated: false };
}

/** A rating that was never tested for what is asked; the other way round (mains for AC, AC for DC) a person looks. */
const fallsShort = (mine: string, wanted: string): boolean => ORDER.indexOf(mine) < ORDER.indexOf(wanted);
const ORDER: readonly string[] = ['dc', 'ac', 'mains'];

/** farad; from here on class 2 loses so much under voltage that two of one code differ by their size and maker. Common practice, no source. */
const BIAS_FROM = decimal('1e-6');

/** A code of class 2 says nothing of the loss under voltage: what serves by its code may be half of another in use. */
function biasNotCompared(has: Part): Finding[] {
  const [value, code] = [numberFact(has, 'value'), wordFact(has, 'dielectric')];
  if (value === null || code === null || compare(value, BIAS_FROM) < 0 || !losesUnderBias(code)) return [];
  return [finding('exact', 'bias-not-compared', { has: code }, 'dielectric')];
}

function openVoltage(has: Part, asked: Part): Finding[] {
  if (asked.facts.voltage) return [];
  const [mine, rated] = [numberFact(has, 'voltage'), has.facts.voltage];
  if (mine === null || !rated) return [finding('check', 'not-stated', { fact: 'voltage', asked: '' }, 'voltage')];
  const enough = compare(mine, decimal(OPEN_VOLTAGE_FLOOR)) >= 0 && polarised(has) !== 'yes';
  return [finding(enough ? 'serves' : 'check', 'not-asked', { fact: 'voltage', has: factText(rated) }, 'voltage')];
}

function openDielectric(has: Part, asked: Part): Finding[] {
  const mine = wordFact(has, 'dielectric');
  if (mine === null || asked.facts.dielectric || !losesHalf(mine)) return [];
  return [finding('check', 'not-asked', { fact: 'dielectric', has: mine }, 'dielectric')];
}

/** Another number on a polarised body means another height, resistance and life: a look. */
function byNumber(has: Part, asked: Part): Finding[] {
  const [mine, wanted] = [wordFact(has, 'partNumber'), wordFact(asked, 'partNumber')];
  if (wanted === null || mine === wanted || polarised(has) !== 'yes') return [];
  return [
    finding(
      'check',
      mine === null ? 'not-stated' : 'differs',
      { fact: 'partNumber', has: mine ?? '', asked: wanted },
      'partNumber',
    ),
  ];
}
