import type { BagGroup } from './scenario.ts';

/** Box A, bags 1–60: chip resistors by value, then precision, other sizes, leaded, and what is not a plain resistor. */
export const RESISTORS: readonly BagGroup[] = [
  { kind: 'resistor', delivery: 'opening-resistors', bags: [
    [1, '0R 0805', 200, 180], [2, '10R 1% 0805 1/8W', 200, 210], [3, '22R 1% 0805 1/8W', 200, 210], [4, '33R 1% 0805 1/8W', 200, 210],
    [5, '47R 1% 0805 1/8W', 200, 210], [6, '68R 1% 0805 1/8W', 100, 130], [7, '100R 1% 0805 1/8W', 300, 270], [8, '120R 1% 0805 1/8W', 100, 130],
    [9, '150R 1% 0805 1/8W', 100, 130], [10, '220R 1% 0805 1/8W', 200, 210], [11, '330R 1% 0805 1/8W', 200, 210], [12, '390R 1% 0805 1/8W', 100, 130],
    [13, '470R 1% 0805 1/8W', 200, 210], [14, '560R 1% 0805 1/8W', 100, 130], [15, '680R 1% 0805 1/8W', 100, 130], [16, '1k 1% 0805 1/8W', 400, 340],
    [17, '1k2 1% 0805 1/8W', 100, 130], [18, '1k5 1% 0805 1/8W', 100, 130], [19, '2k2 1% 0805 1/8W', 200, 210], [20, '2k7 1% 0805 1/8W', 100, 130],
    [21, '3k3 1% 0805 1/8W', 200, 210], [22, '3k9 1% 0805 1/8W', 100, 130], [23, '4k7 1% 0805 1/8W', 300, 270], [24, '5k6 1% 0805 1/8W', 100, 130],
    [25, '6k8 1% 0805 1/8W', 100, 130], [26, '8k2 1% 0805 1/8W', 100, 130], [27, '10k 1% 0805 1/8W', 150, 170], [28, '12k 1% 0805 1/8W', 100, 130],
    [29, '15k 1% 0805 1/8W', 100, 130], [30, '22k 1% 0805 1/8W', 100, 130], [31, '27k 1% 0805 1/8W', 100, 130], [32, '33k 1% 0805 1/8W', 100, 130],
    [33, '39k 1% 0805 1/8W', 100, 130], [34, '47k 1% 0805 1/8W', 200, 210], [35, '68k 1% 0805 1/8W', 100, 130], [36, '100k 1% 0805 1/8W', 300, 270],
    [37, '220k 1% 0805 1/8W', 100, 130], [38, '470k 1% 0805 1/8W', 100, 130], [39, '1M 1% 0805 1/8W', 150, 170],
  ] },
  { kind: 'resistor', delivery: 'precision', bags: [
    [40, '4k7 0.1% 25ppm 0805 1/8W', 50, 640], [41, '10k 0.1% 25ppm 0805 1/8W', 50, 640],
  ] },
  { kind: 'resistor', delivery: 'opening-resistors', bags: [
    [42, '100R 1% 0603 1/10W', 100, 110], [43, '4k7 1% 0603 1/10W', 100, 110], [44, '10k 1% 0603 1/10W', 100, 110],
  ] },
  { kind: 'resistor', delivery: 'spring-top-up', bags: [[45, '10k 1% 0805 1/8W', 400, 330]] },
  { kind: 'resistor', delivery: 'opening-leaded', bags: [
    [46, '4R7 5% 1206 1/4W', 50, 90], [47, '100R 5% 1206 1/4W', 50, 90],
    [48, '100R 1% metal film 1/4W axial', 100, 220], [49, '1k 1% metal film 1/4W axial', 100, 220], [50, '4k7 1% metal film 1/4W axial', 100, 220],
    [51, '10k 1% metal film 1/4W axial', 100, 220], [52, '100k 1% metal film 1/4W axial', 100, 220], [53, '470k 1% metal film 1/4W axial', 50, 140],
    [54, '1M 1% metal film 1/4W axial', 50, 140], [55, '47k 5% metal oxide 1W axial', 30, 240], [56, '0R22 5% wirewound 2W axial', 20, 310],
    [57, '10 mΩ 1% 2W 2512 shunt', 15, 720],
  ] },
  { kind: 'thermistor', delivery: 'opening-leaded', bags: [[58, 'NTC 10k 3% B3950 radial', 12, 480]] },
  { kind: 'varistor', delivery: 'opening-leaded', bags: [[59, 'varistor 275VAC 10mm', 8, 360, { note: 'mains: replaced only by the same' }]] },
  { kind: 'potentiometer', delivery: 'opening-leaded', bags: [[60, 'trimmer 10k 6mm', 15, 590]] },
];
