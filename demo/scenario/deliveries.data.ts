import type { Delivery, TopUp } from './scenario.ts';

const [MAREN, TOBIAS, INES] = ['Maren Oduya', 'Tobias Quell', 'Ines Farrow'];

/** Everything that came into the lab, the first day to the last. */
export const DELIVERIES: readonly Delivery[] = [
  { key: 'opening-resistors', day: '2024-11-25', who: MAREN, supplier: 'Quayside', note: 'the first box' },
  { key: 'opening-capacitors', day: '2024-11-26', who: MAREN, supplier: 'Quayside' },
  { key: 'opening-leaded', day: '2024-11-28', who: TOBIAS, supplier: 'Harrow & Pike' },
  { key: 'opening-semiconductors', day: '2024-12-03', who: TOBIAS, supplier: 'Harrow & Pike' },
  { key: 'opening-connectors', day: '2024-12-09', who: INES, supplier: 'Lantern Components' },
  { key: 'opening-fasteners', day: '2024-12-10', who: INES, supplier: 'Mill Lane Fasteners' },
  { key: 'logger-parts', day: '2025-01-20', who: MAREN, supplier: 'Quayside', note: 'for the first loggers' },
  { key: 'mains-parts', day: '2025-02-06', who: TOBIAS, supplier: 'Lantern Components', note: 'mains side: kept in bags marked in red' },
  { key: 'salvage', day: '2025-03-15', who: TOBIAS, supplier: null, note: 'unsoldered' },
  { key: 'precision', day: '2025-05-12', who: INES, supplier: 'Quayside' },
  { key: 'summer-top-up', day: '2025-07-08', who: MAREN, supplier: 'Harrow & Pike' },
  { key: 'spring-top-up', day: '2026-03-10', who: MAREN, supplier: 'Quayside' },
  { key: 'autumn-top-up', day: '2026-09-14', who: INES, supplier: 'Mill Lane Fasteners' },
];

/** More of what was running out: the same bag where it is the same part; the 10k came as a strip of another maker, so bag 45 was made. */
export const TOP_UPS: readonly TopUp[] = [
  ['summer-top-up', 125, 50, 340], ['summer-top-up', 149, 40, 380], ['summer-top-up', 189, 40, 990],
  ['spring-top-up', 23, 200, 190], ['spring-top-up', 16, 200, 190], ['spring-top-up', 81, 60, 270], ['spring-top-up', 64, 100, 190],
  ['autumn-top-up', 244, 200, 510], ['autumn-top-up', 251, 200, 270],
];
