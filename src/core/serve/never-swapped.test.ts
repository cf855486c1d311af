import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import { serve } from './serve.ts';

/**
 * What nobody swaps by rule: for each sort, pairs of texts with the verdicts that are right. Where the source names no clause it is
 * the practice of repair: a part that protects, insulates or was selected is replaced by its like alone.
 */
const LIST: readonly (readonly [
  sort: string,
  source: string,
  pairs: readonly (readonly [right: string, bag: string, line: string])[],
])[] = [
  [
    'X and Y capacitors by class',
    'IEC 60384-14, classes and impulse tests; from memory',
    [
      ['exact', '100nF X2 275VAC film capacitor 15mm', '100nF X2 275VAC film capacitor 15mm'],
      ['check', '100nF X2 310VAC film capacitor 15mm', '100nF X2 275VAC film capacitor 15mm'],
      ['check', '100nF X2 275VAC film capacitor 15mm 10%', '100nF X2 275VAC film capacitor 15mm 20%'],
      ['check', '100nF X1 275VAC film capacitor 15mm', '100nF X2 275VAC film capacitor 15mm'],
      ['check', '4.7nF Y2 250VAC capacitor 10mm', '4.7nF X2 250VAC capacitor 10mm'],
      ['missing', '4.7nF X2 250VAC capacitor 10mm', '4.7nF Y2 250VAC capacitor 10mm'],
      ['missing', '4.7nF Y2 250VAC capacitor', '4.7nF Y1 250VAC capacitor'],
      ['missing', 'film capacitor 100nF 630VDC 15mm', '100nF X2 275VAC film capacitor 15mm'],
      ['missing', 'ceramic capacitor 4.7nF 2kV', '4.7nF Y1 250VAC capacitor'],
      ['check', '100nF X2 275V capacitor', '100nF X2 275VAC capacitor'],
    ],
  ],
  [
    'fuses by characteristic, current, voltage, size and breaking capacity',
    'IEC 60127-1 clause 6, marking',
    [
      ['exact', 'fuse T1AH250V 5x20', 'fuse T1AH250V 5x20'],
      ['missing', 'fuse F1AH250V 5x20', 'fuse T1AH250V 5x20'],
      ['missing', 'fuse T1.25AH250V 5x20', 'fuse T1AH250V 5x20'],
      ['missing', 'fuse T1AH125V 5x20', 'fuse T1AH250V 5x20'],
      ['check', 'fuse T1AH400V 5x20', 'fuse T1AH250V 5x20'],
      ['missing', 'fuse T1AH250V 6.3x32', 'fuse T1AH250V 5x20'],
      ['missing', 'fuse T1AL250V 5x20', 'fuse T1AH250V 5x20'],
      ['check', 'fuse T1AH250V 5x20', 'fuse T1AL250V 5x20'],
      ['check', 'fuse T1A 250V 5x20', 'fuse T1AH250V 5x20'],
      ['check', 'fuse 3A slow blow 250V 6.3x32', 'fuse T3A 250V 6.3x32'],
    ],
  ],
  [
    'fuses that reset themselves are no fuses',
    'practice: they limit, and never interrupt',
    [
      ['missing', 'PPTC 1A 1206', 'fuse F1A 1206'],
      ['missing', 'fuse F1A 1206', 'PPTC 1A 1206'],
      ['check', 'PPTC 1A 30V 1812', 'PPTC 1A 16V 1812'],
    ],
  ],
  [
    'thermal cut-offs',
    'IEC 60691, from memory',
    [
      ['missing', 'thermal fuse 10A 250V', 'fuse 10A 250V'],
      ['check', 'thermal fuse 10A 250V', 'thermal fuse 10A 250V'],
    ],
  ],
  [
    'fusible and flame-proof resistors',
    'practice of repair, no source',
    [
      ['exact', 'resistor 10R 1W 5% fusible', 'resistor 10R 1W 5% fusible'],
      ['check', 'resistor 10R 1W 1% fusible', 'resistor 10R 1W 5% fusible'],
      ['check', 'resistor 10R 2W 5% flameproof', 'resistor 10R 1W 5% flameproof'],
      ['check', 'resistor 10R 1W 5%', 'resistor 10R 1W 5% fusible'],
      ['check', 'Sicherungswiderstand 10R 1W 1%', 'Sicherungswiderstand 10R 1W 5%'],
    ],
  ],
  [
    'resistors that sense a current',
    'practice: coefficient and terminals count, no source',
    [
      ['check', 'resistor 0R1 1W 1% 2512', 'resistor 0R1 1W 1% 2512 current sense'],
      ['check', 'resistor 0R1 2W 1% 2512 current sense', 'resistor 0R1 1W 1% 2512 current sense'],
    ],
  ],
  [
    'varistors, gas tubes and other parts against surges',
    'IEC 61051-1 and IEC 61643-11, from memory',
    [
      ['check', 'varistor 275VAC 14mm', 'varistor 275VAC 14mm'],
      ['missing', 'varistor 275VAC 10mm', 'varistor 275VAC 14mm'],
      ['missing', 'varistor 275VAC 14mm', 'GDT 275V'],
      ['check', 'TVS diode 12V 1500W SMA', 'TVS diode 12V 600W SMA'],
      ['missing', 'SMBJ24A', 'SMBJ24CA'],
    ],
  ],
  [
    'switches and relays for the mains',
    'IEC 61058-1 and IEC 61810-1, from memory',
    [
      ['check', 'rocker switch SPST 250VAC 16A', 'rocker switch SPST 250VAC 10A'],
      ['check', 'relay 5V SPDT 16A 250VAC', 'relay 5V SPDT 10A 250VAC'],
      ['check', 'relay 5V SPDT 10A', 'relay 5V SPDT 10A'],
      ['check', 'solid state relay 5V 25A', 'solid state relay 5V 10A'],
      ['missing', 'solid state relay 5V 10A', 'relay 5V SPDT 10A'],
    ],
  ],
  [
    'transformers',
    'IEC 61558-1, from memory',
    [
      ['check', 'transformer 230V 9V 3VA', 'transformer 230V 9V 3VA'],
      ['missing', 'transformer 115V 9V 3VA', 'transformer 230V 9V 3VA'],
      ['check missing', 'transformer 230V 9V 5VA', 'transformer 230V 9V 3VA'],
    ],
  ],
  [
    'parts that insulate',
    'IEC 60747-5-5, IEC 62368-1: creepage and clearance are of the type; from memory',
    [
      ['exact', 'optocoupler PC817 DIP-4', 'optocoupler PC817 DIP-4'],
      ['missing', 'optocoupler PC817', 'optocoupler 4N35'],
      ['check', 'optocoupler DIP-4', 'optocoupler DIP-4'],
      ['check', 'isolated DC/DC 5V 1W', 'isolated DC/DC 5V 1W'],
    ],
  ],
  [
    'cells and their protection',
    'IEC 60086-2 and IEC 62133-2, from memory',
    [
      ['check', 'CR2032', 'CR2032'],
      ['missing', 'CR2025', 'CR2032'],
      ['missing', 'LIR2032', 'CR2032'],
      ['missing', 'BR2032', 'CR2032'],
      ['missing', 'SR44', 'LR44'],
      ['check missing', '18650 Li-ion 3.7V 2600mAh', '18650 Li-ion 3.7V 2600mAh protected'],
      ['check missing', '18650 Li-ion 3.7V 2600mAh protected', '18650 Li-ion 3.7V 2600mAh'],
      ['missing', 'LiFePO4 18650 3.2V', 'Li-ion 18650 3.7V'],
    ],
  ],
  [
    'programmed parts',
    'practice, no source',
    [
      ['check', 'ATmega328P-PU', 'ATmega328P-PU programmed'],
      ['check', 'ATmega328P-PU programmed', 'ATmega328P-PU'],
      ['check', 'ATmega328P-PU with bootloader', 'ATmega328P-PU with bootloader'],
      ['check', 'ATmega328P-PU programmiert', 'ATmega328P-PU'],
    ],
  ],
  [
    'pin-outs: same outline, other order of the leads',
    'makers’ sheets: C-B-E and E-B-C on TO-92; from memory',
    [
      ['missing', 'BC547B TO-92', '2N3904 TO-92'],
      ['missing check', '2SC1815 TO-92', '2N3904 TO-92'],
      ['missing check', '78L05 SOT-89', 'LM7805 SOT-89'],
      ['check', 'NPN transistor SOT-23', 'NPN transistor SOT-23'],
      ['check', 'MMBT3904 SC-59', 'MMBT3904 SOT-23'],
      ['missing', 'BAT54S SOT-23', 'BAT54C SOT-23'],
    ],
  ],
  [
    'what was matched or graded',
    'practice, no source',
    [
      ['missing check', 'BC547A TO-92', 'BC547B TO-92'],
      ['check', 'resistor 10k 1% 0603', 'resistor 10k 5% 0603 matched'],
    ],
  ],
  [
    'crystals by their load, logic by its family, regulators by what they give',
    'practice, no source',
    [
      ['missing', 'crystal 16MHz 12pF HC-49S', 'crystal 16MHz 18pF HC-49S'],
      ['missing', '74HC245 DIP-20', '74HCT245 DIP-20'],
      ['missing', 'AMS1117-ADJ SOT-223', 'AMS1117-3.3 SOT-223'],
    ],
  ],
  [
    'grades that a suffix or a word says',
    'AEC-Q100 and -Q200; practice',
    [
      ['check missing', 'TPS7A16-Q1', 'TPS7A16'],
      ['check', 'resistor 10k 1% 0603', 'resistor 10k 5% 0603 AEC-Q200'],
      ['check missing', 'screw M3x8 pan head', 'screw M3x8 pan head 12.9'],
    ],
  ],
  [
    'class 1 where it filters and times; polarity',
    'EIA-198, classes',
    [
      ['missing', '1nF 50V X7R 0603', '1nF 50V C0G 0603'],
      ['missing', 'Elko 10uF 25V', 'Elko 10uF 25V bipolar'],
      ['check', 'Elko 100uF 25V', 'Elko 100uF 25V low ESR'],
    ],
  ],
  [
    'connectors by gender and pitch',
    'practice: 2.50 is not 2.54 mm',
    [
      ['missing', 'pin header 1x6 2.5mm', 'pin header 1x6 2.54mm'],
      ['missing', 'socket strip 1x6 2.54mm', 'pin header 1x6 2.54mm'],
    ],
  ],
  [
    'anything that is marked for safety',
    'IEC 62368-1, parts critical for safety; from memory',
    [
      ['check', 'resistor 1M 1W 1% safety', 'resistor 1M 1W 5% safety'],
      ['check', 'wire 0.75mm² red mains', 'wire 0.75mm² mains'],
    ],
  ],
];

for (const [sort, source, pairs] of LIST)
  void test(`never swapped by rule: ${sort} (${source})`, () => {
    const wrong = pairs.flatMap(([right, bag, line]) => {
      const { verdict, because } = serve(readPart(bag).part, readPart(line).part);
      return right.split(' ').includes(verdict) && because.length > 0 ? [] : [`${bag} for ${line}: ${verdict}, not ${right}`];
    });
    assert.deepEqual(wrong, []);
  });

void test('the caution stands in the reasons, not only in the verdict', () => {
  for (const [bag, line] of [
    ['100nF X2 310VAC 15mm film capacitor', '100nF X2 275VAC 15mm film capacitor'],
    ['fuse T1AH400V 5x20', 'fuse T1AH250V 5x20'],
    ['resistor 10R 1W 1% fusible', 'resistor 10R 1W 5% fusible'],
    ['varistor 275VAC 14mm', 'varistor 275VAC 14mm'],
    ['rocker switch SPST 250VAC 16A', 'rocker switch SPST 250VAC 10A'],
    ['optocoupler DIP-4', 'optocoupler DIP-4'],
    ['transformer 230V 9V 3VA', 'transformer 230V 9V 3VA'],
  ] as const) {
    const { because } = serve(readPart(bag).part, readPart(line).part);
    assert.ok(
      because.some(({ code }) => code === 'safety'),
      `${bag}: ${JSON.stringify(because)}`,
    );
  }
});
