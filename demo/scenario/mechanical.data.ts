import type { BagGroup } from './scenario.ts';

/** Box E, bags 241–300: screws by thread and length, nuts, washers, standoffs, then what is cut from a length. */
export const MECHANICAL: readonly BagGroup[] = [
  { kind: 'screw', delivery: 'opening-fasteners', bags: [
    [241, 'screw M2.5x6 pan head', 50, 210], [242, 'screw M2.5x10 pan head', 50, 220], [243, 'screw M3x6 pan head', 200, 480], [244, 'screw M3x8 pan head', 200, 490],
    [245, 'screw M3x10 pan head', 200, 510], [246, 'screw M3x12 pan head', 100, 320], [247, 'screw M3x16 pan head', 100, 360], [248, 'screw M3x8 countersunk', 50, 240],
    [249, 'screw M4x10 pan head', 50, 310],
  ] },
  { kind: 'nut', delivery: 'opening-fasteners', bags: [[250, 'nut M2.5', 100, 180], [251, 'nut M3', 200, 260], [252, 'nut M4', 100, 210], [253, 'lock nut M3', 50, 220]] },
  { kind: 'washer', delivery: 'opening-fasteners', bags: [[254, 'washer M3', 200, 190], [255, 'spring washer M3', 100, 180], [256, 'washer M4', 100, 170]] },
  { kind: 'standoff', delivery: 'opening-fasteners', bags: [
    [257, 'standoff M3x6 nylon male-female', 60, 540], [258, 'standoff M3x10 female-female', 60, 960], [259, 'standoff M3x15 female-female', 30, 560], [260, 'standoff M3x20 male-female', 20, 420],
  ] },
  { kind: 'mechanical', delivery: 'opening-fasteners', bags: [
    [261, 'cable gland PG7', 30, 890], [262, 'cable gland PG9', 10, 370], [263, 'heat sink TO-220', 10, 620], [264, 'insulating pad TO-220', 20, 280],
    [265, 'rubber foot 10mm', 40, 310], [266, 'cable tie 2.5x100mm', 100, 190],
  ] },
  { kind: 'wire', delivery: 'opening-fasteners', bags: [
    [267, 'wire 0.25mm² red', 25_000, 640, { holder: 'spool', unit: 'mm', sure: 20_000 }], [268, 'wire 0.25mm² black', 25_000, 640, { holder: 'spool', unit: 'mm', sure: 20_000 }],
  ] },
  { kind: 'mechanical', delivery: 'opening-fasteners', bags: [
    [269, 'heat-shrink 2.4mm black', 10_000, 390, { holder: 'spool', unit: 'mm', sure: 0, note: 'about 10 m' }], [270, 'heat-shrink 4.8mm black', 5_000, 310, { unit: 'mm' }],
    [271, 'solder Sn60Pb40 0.7mm', 250_000, 1490, { holder: 'spool', unit: 'mg', sure: 200_000, note: 'holds lead: wash hands, extract the fumes' }],
    [272, 'solder Sn99Cu1 0.7mm', 100_000, 1180, { holder: 'spool', unit: 'mg' }],
  ] },
];
