import type { Kind } from './part.ts';

/**
 * Reference letters as evidence of kind: IEEE 315-1975 cl. 22 / ASME Y14.44 (letters from memory) and what lists use in
 * practice. The weight says how far the letter alone is to be trusted: `R`, `C` much, `X`, `P`, `T` little.
 */
export const REF_ROWS: readonly (readonly [letters: string, kind: Kind, weight: number])[] = [
  ['R RES RA RB RC RD RE RG RH RS', 'resistor', 5], ['RN RP RNET RPACK', 'resistor-network', 6], ['RV VR', 'potentiometer', 2.4], ['POT TRIM P', 'potentiometer', 3],
  ['RT TH NTC PTC', 'thermistor', 6], ['MOV VDR VAR', 'varistor', 6],
  ['C CAP CP CE CC', 'capacitor', 5], ['CN', 'connector', 4],
  ['L IND', 'inductor', 4], ['FB FER', 'ferrite', 6], ['T TR TRF', 'transformer', 2],
  ['D CR DIODE', 'diode', 4], ['ZD DZ VZ', 'zener', 6], ['TVS', 'tvs', 6], ['LED LD', 'led', 6], ['DS DISP LCD OLED', 'display', 3],
  ['Q TRANS', 'transistor', 4], ['T', 'transistor', 2],
  ['U IC', 'ic', 4], ['VREG REG', 'regulator', 5], ['PS PWS', 'module', 4],
  ['Y XTAL XT', 'crystal', 5], ['X', 'crystal', 2], ['Q', 'crystal', 1], ['OSC', 'oscillator', 6],
  ['J CON CONN JK USB X PL SK XS XP P SV K', 'connector', 3], ['JP', 'header', 3], ['TB XT', 'connector', 4], ['HDR', 'header', 6], ['H', 'mechanical', 1],
  ['S SW BTN PB KEY ENC', 'switch', 5], ['K RL RLY REL RY', 'relay', 4], ['F FU FUSE PF', 'fuse', 5],
  ['BT BAT BATT', 'battery', 5], ['B G', 'battery', 2], ['MK MIC', 'sensor', 5], ['BZ LS SP SPK BUZ', 'speaker', 5], ['TP', 'testpoint', 6],
  ['SJ JMP LK LINK', 'jumper', 5], ['FID FD FM PASS', 'not-a-part', 5], ['MH', 'not-a-part', 5], ['HW MP HS', 'mechanical', 4],
  ['W CBL', 'wire', 3], ['M MOT', 'other', 3], ['A', 'module', 1], ['SEN', 'sensor', 5], ['OK OPTO', 'ic', 5],
  ['FL CF EMI AT FAN CB GN MTR', 'other', 4], ['V', 'transistor', 1], ['V', 'other', 1.5], ['Z', 'zener', 1.5], ['N', 'ic', 1], ['RP', 'potentiometer', 1], ['RV VR', 'varistor', 2], ['VR', 'regulator', 1], ['XF XU XDS', 'connector', 4], ['P', 'connector', 0.3],
  ['LOGO', 'not-a-part', 6], ['ANT AE', 'other', 6], ['E', 'other', 3], ['MOD', 'module', 5], ['SSR', 'relay', 6],
];
