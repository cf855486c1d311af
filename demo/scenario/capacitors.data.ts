import type { BagGroup } from './scenario.ts';

/** Box B, bags 61–120: ceramic by value, then tantalum, electrolytic, film and what belongs to the mains. */
export const CAPACITORS: readonly BagGroup[] = [
  { kind: 'capacitor', delivery: 'opening-capacitors', bags: [
    [61, '10p 50V C0G 5% 0805', 100, 190], [62, '15p 50V C0G 5% 0805', 100, 190], [63, '18p 50V C0G 5% 0805', 100, 190], [64, '22p 50V C0G 5% 0805', 100, 190],
    [65, '33p 50V C0G 5% 0805', 100, 190], [66, '47p 50V C0G 5% 0805', 100, 190], [67, '100p 50V C0G 5% 0805', 100, 190], [68, '220p 50V C0G 5% 0805', 100, 190],
    [69, '330p 50V C0G 5% 0805', 100, 190], [70, '470p 50V C0G 5% 0805', 100, 190], [71, '1n 50V C0G 5% 0805', 100, 220],
    [72, '1n 50V X7R 10% 0805', 100, 160], [73, '2n2 50V X7R 10% 0805', 100, 160], [74, '4n7 50V X7R 10% 0805', 100, 160], [75, '10n 50V X7R 10% 0805', 200, 250],
    [76, '22n 50V X7R 10% 0805', 100, 160], [77, '47n 50V X7R 10% 0805', 100, 160],
    [78, '100n 50V X7R 10% 0805', 4000, 3900, { holder: 'reel', sure: 3000, note: 'a used reel: 4000 by the label, some are gone' }],
    [79, '220n 50V X7R 10% 0805', 100, 210], [80, '470n 25V X7R 10% 0805', 100, 230], [81, '1u 16V X7R 10% 0805', 60, 260], [82, '1u 25V X7R 10% 0805', 70, 290],
    [83, '2u2 16V X7R 10% 0805', 50, 240], [84, '4u7 10V X5R 10% 0805', 50, 260], [85, '10u 10V X5R 20% 0805', 60, 380], [86, '22u 6.3V X5R 20% 0805', 40, 360],
    [87, '10u 16V X7R 10% 1206', 40, 520], [88, '10u 25V X7R 10% 1210', 20, 480], [89, '22u 25V X5R 20% 1210', 20, 560],
    [90, '100n 50V X7R 10% 0603', 200, 310], [91, '100n 16V X7R 10% 0402', 200, 280], [92, '100n 50V X7R 10% 1206', 100, 340],
    [93, '1u X7R 0805', 35, 0, { note: 'from a trade of strips: nobody knows for how many volts' }],
  ] },
  { kind: 'capacitor', delivery: 'opening-leaded', bags: [
    [94, '10u 16V tantalum 10% EIA-3216', 20, 690], [95, '47u 10V tantalum 10% EIA-3528', 20, 980], [96, '100u 10V tantalum 10% EIA-7343', 10, 1150],
    [97, '1u 50V electrolytic radial 5mm', 50, 250], [98, '10u 25V electrolytic radial 5mm', 50, 250], [99, '10u 50V electrolytic radial 5mm', 50, 280],
    [100, '47u 25V electrolytic radial 5mm', 50, 300], [101, '100u 16V electrolytic radial 6.3mm', 50, 320], [102, '100u 25V electrolytic radial 6.3mm', 40, 310],
    [103, '220u 35V electrolytic radial 10mm', 30, 420], [104, '330u 10V electrolytic low ESR radial 8mm', 25, 540], [105, '470u 16V electrolytic radial 8mm', 25, 430],
    [106, '1000u 25V electrolytic radial 10mm', 20, 560], [107, '2200u 16V electrolytic radial 13mm', 10, 490],
  ] },
  { kind: 'capacitor', delivery: 'salvage', bags: [[108, '1000u 35V electrolytic radial 13mm', 6, 0, { state: 'salvaged', note: 'out of an old amplifier' }]] },
  { kind: 'capacitor', delivery: 'mains-parts', bags: [
    [109, '100n X2 275VAC film pitch 15mm', 12, 410, { note: 'mains: replaced only by the same class or better, by a person' }],
    [110, '470n X2 275VAC film pitch 22.5mm', 6, 360, { note: 'mains' }], [111, '2n2 Y2 250VAC ceramic pitch 10mm', 10, 350, { note: 'mains to earth: an X capacitor never takes its place' }],
  ] },
  { kind: 'capacitor', delivery: 'opening-leaded', bags: [
    [112, '10n 63V film pitch 5mm', 50, 330], [113, '100n 63V film pitch 5mm', 50, 380], [114, '1u 63V film pitch 5mm', 20, 420],
    [115, '22p 50V C0G ceramic pitch 2.54mm', 40, 190], [116, '100n 50V X7R ceramic pitch 5.08mm', 100, 340], [117, '0.47F 5.5V supercap radial', 4, 760],
  ] },
];
