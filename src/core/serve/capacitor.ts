import { losesHalf } from '#core/part/dielectric.ts';
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
  ];
}

function polarity(has: Part, asked: Part): Finding[] {
  const [mine, wanted] = [polarised(has), polarised(asked)];
  const args = { has: mine ?? '', asked: wanted ?? '' };
  if (mine === wanted || (mine === 'no' && wanted === null) || (wanted === 'no' && mine === null)) return [];
  return [finding(mine === 'yes' && wanted === 'no' ? 'missing' : 'check', 'polarised', args, 'polarised')];
}

/** A direct-voltage rating says nothing about the mains; the other way round a look is enough. */
function voltageKind(has: Part, asked: Part): Finding[] {
  const [mine, wanted] = [has.facts['voltage-kind'], asked.facts['voltage-kind']];
  const [from, to] = [mine?.value ?? 'dc', wanted?.value ?? 'dc'];
  if (from === to || to === 'dc') return [];
  const args = { fact: 'voltage-kind', has: mine?.value ?? '', asked: to };
  return [finding(mine && !(from === 'mains' && to === 'ac') ? 'missing' : 'check', 'safety', args, 'voltage-kind')];
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
