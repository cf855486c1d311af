/**
 * Land pattern names of IPC-7351B (surface mount) and IPC-7251 (through hole): letters of the family, then pitch, body and height in
 * hundredths of a millimetre, two-terminal bodies in tenths, then the count of pins. `N M L` at the end say how dense the pads are.
 */

/** Two terminals on a chip: the body in tenths of a millimetre is its metric size. */
export const CHIP_LETTERS = 'RESC CAPC INDC LEDC DIOC FUSC BEADC THRMC VARC FERC RESSC CAPSC';
/** Moulded capacitors: tantalum and polymer cases. */
export const CASE_CAPACITORS = 'CAPMP CAPM CAPPM';
/** Crystals and oscillators carry their body in hundredths of a millimetre. */
export const RESONATOR_LETTERS = 'XTAL XTALC OSC OSCC OSCCC OSCSC OSCM CRYS';

/** Moulded and flat-lead diodes by body or lead span, in tenths of a millimetre; several libraries, heights left out. */
export const DIODE_BODIES: readonly (readonly [letters: string, lengthFrom: number, lengthTo: number, widthFrom: number, widthTo: number, name: string])[] = [
  ['DIOM', 45, 58, 20, 31, 'SMA'], ['DIOM', 45, 60, 32, 42, 'SMB'], ['DIOM', 70, 85, 50, 70, 'SMC'],
  ['DIOM', 34, 40, 13, 20, 'SOD-123'], ['DIOM', 23, 28, 10, 16, 'SOD-323'], ['DIOM', 15, 17, 6, 10, 'SOD-523'],
  ['SODFL', 33, 40, 13, 22, 'SOD-123FL'], ['SODFL', 23, 28, 10, 16, 'SOD-323F'], ['SODFL', 14, 17, 6, 10, 'SOD-523F'],
  ['SOD', 33, 40, 13, 20, 'SOD-123'], ['SOD', 23, 28, 10, 16, 'SOD-323'], ['SOD', 14, 17, 6, 10, 'SOD-523'], ['SOD', 9, 11, 5, 7, 'SOD-923'],
  ['DIOMELF', 30, 40, 10, 20, 'SOD-80'], ['DIOMELF', 41, 60, 20, 30, 'MELF'], ['DIOMELF', 15, 25, 9, 14, 'MicroMELF'],
  ['RESMELF', 30, 40, 10, 20, 'MiniMELF'], ['RESMELF', 41, 65, 20, 30, 'MELF'], ['RESMELF', 15, 25, 9, 14, 'MicroMELF'],
];

/** Small outlines: pitch and lead span in hundredths of a millimetre, pins; highest height where a flatter sister has its own name. */
export const SMALL_OUTLINES: readonly (readonly [pitch: number, spanFrom: number, spanTo: number, pins: string, name: string, heightTo?: number])[] = [
  [95, 200, 320, '5', 'TSOT-23-5', 100], [95, 200, 320, '6', 'TSOT-23-6', 100], [65, 260, 320, '8', 'TSOT-23-8', 100],
  [95, 200, 320, '3', 'SOT-23'], [190, 200, 320, '3', 'SOT-23'], [95, 200, 320, '5', 'SOT-23-5'], [95, 200, 320, '6', 'SOT-23-6'], [65, 260, 320, '8', 'SOT-23-8'],
  [190, 200, 280, '4', 'SOT-143'], [192, 200, 280, '4', 'SOT-143'], [95, 200, 280, '4', 'SOT-143'],
  [65, 180, 250, '3', 'SC-70'], [130, 180, 250, '3', 'SC-70'], [65, 180, 250, '5', 'SC-70-5'], [65, 180, 250, '6', 'SC-70-6'],
  [50, 140, 180, '3', 'SOT-523'], [100, 140, 180, '3', 'SOT-523'], [50, 140, 180, '5', 'SOT-553'], [50, 140, 180, '6', 'SOT-563'], [40, 100, 130, '3', 'SOT-723'], [80, 100, 130, '3', 'SOT-723'],
  [230, 640, 760, '3 4', 'SOT-223'], [150, 380, 450, '3 4', 'SOT-89'],
];

/** Gull-wing packages of the family SOP that the trade calls otherwise: pitch and span in hundredths of a millimetre. */
export const SOP_NAMES: readonly (readonly [pitch: number, spanFrom: number, spanTo: number, name: string])[] = [
  [65, 460, 520, 'MSOP'], [50, 460, 520, 'MSOP'], [65, 600, 670, 'TSSOP'], [50, 600, 670, 'TSSOP'], [65, 760, 830, 'SSOP'], [50, 800, 830, 'TSSOP'],
];

/** Transistor outlines: pitch and the next dimension in hundredths of a millimetre, how many dimensions there are, pins. */
export const TRANSISTOR_OUTLINES: readonly (readonly [pitchFrom: number, pitchTo: number, firstFrom: number, firstTo: number, dimensions: number, pins: string, name: string])[] = [
  [226, 231, 930, 1060, 2, '2 3', 'TO-252'], [250, 260, 1400, 1600, 2, '2 3', 'TO-263'], [450, 520, 1400, 1600, 2, '2 3', 'TO-263'], [170, 172, 1400, 1600, 2, '5 6', 'TO-263-5'],
  [126, 128, 1400, 1600, 2, '7 8', 'TO-263-7'], [113, 128, 930, 1060, 2, '5 6', 'TO-252-5'],
  [250, 260, 980, 1070, 3, '3', 'TO-220'], [168, 172, 980, 1070, 3, '5', 'TO-220-5'], [540, 550, 1500, 1620, 3, '3', 'TO-247'], [126, 128, 440, 520, 3, '3', 'TO-92'], [226, 231, 640, 680, 3, '3', 'TO-251'],
];

/** Axial bodies by lead diameter, length and diameter in hundredths of a millimetre: JEDEC DO-204 for diodes, DIN 44061 sizes for resistors. */
export const AXIAL_BODIES: readonly (readonly [letters: string, lead: readonly [number, number], length: readonly [number, number], diameter: readonly [number, number], name: string])[] = [
  ['DIOAD', [46, 55], [216, 304], [127, 190], 'DO-34'], ['DIOAD', [46, 55], [305, 508], [153, 228], 'DO-35'], ['DIOAD', [72, 89], [407, 520], [204, 271], 'DO-41'],
  ['DIOAD', [69, 88], [585, 762], [265, 355], 'DO-15'], ['DIOAD', [46, 55], [585, 762], [216, 271], 'DO-7'], ['DIOAD', [46, 55], [585, 762], [275, 355], 'DO-14'], ['DIOAD', [74, 83], [800, 914], [305, 381], 'DO-29'],
  ['RESAD', [40, 65], [300, 400], [150, 190], 'DIN0204'], ['RESAD', [50, 65], [600, 680], [220, 250], 'DIN0207'],
];
