import assert from 'node:assert/strict';
import { test } from 'node:test';
import { partCode } from '../part-code.ts';
import { readPart } from '../read-part.ts';

/** What is written, and the code of what it is. Common practice, no source. */
const ROWS: readonly (readonly [code: string, ...texts: string[]])[] = [
  [
    'HS-M3-10MM-CAP-HEX-STAINLESS',
    'M3x10 ISO 4762 A2',
    'DIN EN ISO 4762 M3x10 A2',
    'Zylinderschraube Innensechskant M3 x 10 A2',
    'DIN912 M3x10 Edelstahl',
  ],
  ['HS-4-40-6.35MM-PAN', '#4-40 x 1/4 pan', '4-40 x 1/4" pan head screw', '4-40x0.25 in pan'],
  [
    'HS-M3-10MM-COUNTERSUNK',
    'Senkkopfschraube M3x10',
    'tornillo M3x10 avellanado',
    'vite M3x10 testa svasata',
    'vis M3x10 tête fraisée',
    'M3x10 countersunk screw',
  ],
  ['HS-M3-8MM-CHEESE-SLOT', 'Zylinderkopfschraube Schlitz M3x8', 'M3x8 DIN 84', 'screw M3x8 ISO 1207'],
  [
    'HB-M3-10MM-BRASS-MF-STUD6MM',
    'Standoff M3x10+6 male-female brass hex',
    'Abstandsbolzen M3x10+6 Messing innen/außen',
    'spacer M3x10+6 brass',
  ],
  ['HB-M2.5-12MM-NYLON-FF', 'nylon standoff M2.5 x 12 f/f', 'Abstandsbolzen Polyamid M2,5x12 innen/innen'],
  ['HN-M3-LOCK', 'Stoppmutter M3', 'nut M3 DIN 985', 'M3 nyloc nut'],
  ['HW-M3-SPRING', 'Federring M3', 'washer M3 DIN 127', 'M3 spring washer'],
  ['MP-M3-5.7MM-BRASS-INSERT', 'threaded insert M3 x 5.7 heat set brass', 'Gewindeeinsatz M3x5.7 Messing'],
  ['WC-RED-STRANDED-0.5MM2', '0,5 mm² rot Litze', 'stranded wire 0.50 mm2 red'],
  ['WC-BLUE-LIY-0.25MM2', 'LiY 0,25 blau', 'LiY 0.25 mm² blue'],
  ['X-6DIA-HEAT-SHRINK-3TO1', 'heat shrink 3:1 6 mm', 'Schrumpfschlauch 6/2 mm', 'heatshrink tube 6mm 3:1'],
  ['X-BLACK-6.4DIA-HEAT-SHRINK-2TO1', 'Schrumpfschlauch HT 6.4/3.2 schwarz', 'heat shrink 6.4 mm 2:1 black'],
  ['JH-2X5-2.54MM', 'header 2x5 2.54 mm', 'Stiftleiste 2x5 2,54mm', 'pin header 2x5 RM 2.54'],
  ['JH-1X40', '1x40 pin header'],
];

for (const [code, ...texts] of ROWS)
  void test(`${code} by every spelling`, () => {
    for (const text of texts) assert.equal(partCode(readPart(text).part), code, text);
  });

void test('what tells fasteners apart stays apart', () => {
  const texts = [
    'screw M3x10 A2',
    'screw M3x10 A4',
    'screw M3x10 8.8',
    'screw M3x10 10.9',
    'nut M5 DIN 934',
    'nut M5 ISO 4032',
    'screw M8x1x20',
    'screw M8x20',
    'screw M5x20 DIN 931',
    'screw M5x20 DIN 933',
    'female 2x20 8.5mm',
    'female 2x20 11mm',
    'screw 4-40 x 1/4',
    'screw M3x6.35',
  ];
  assert.equal(new Set(texts.map((text) => partCode(readPart(text).part))).size, texts.length);
});
