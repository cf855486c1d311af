import type { Kind } from './part.ts';

/** Voltages by the letter or digit that a maker's ordering code gives them; each maker has its own alphabet. */
export const VOLTS = {
  // EIA/JIS two-character code, see `eiaVolts`
  eia: {},
  kemet: { 7: '4', 9: '6.3', 8: '10', 4: '16', 3: '25', 6: '35', 5: '50', 1: '100', 2: '200', A: '250', C: '500', D: '1000' },
  avx: { 4: '4', 6: '6.3', Z: '10', Y: '16', 3: '25', D: '35', 5: '50', 1: '100', 2: '200', V: '250', 7: '500', C: '600', A: '1000' },
  yageo: { 4: '4', 5: '6.3', 6: '10', 7: '16', 8: '25', G: '35', 9: '50', 0: '100', A: '200', Y: '250', B: '500', Z: '630', C: '1000', D: '2000', E: '3000' },
  samsung: { R: '4', Q: '6.3', P: '10', O: '16', A: '25', L: '35', B: '50', C: '100', D: '200', E: '250', G: '500', H: '630', I: '1000', J: '2000', K: '3000' },
  taiyo: { A: '4', J: '6.3', L: '10', E: '16', T: '25', G: '35', U: '50', H: '100', Q: '250', S: '630' },
  tantalum: { '2R5': '2.5', '002': '2.5', '004': '4', '006': '6.3', '6R3': '6.3', '010': '10', '016': '16', '020': '20', '025': '25', '035': '35', '050': '50' },
  vj: { Q: '10', J: '16', X: '25', A: '50', B: '100', C: '200' },
  digits: {}, // two digits and a count of zeros: 500 = 50 V, 101 = 100 V
} as const satisfies Readonly<Record<string, Readonly<Record<string, string>>>>;

export const DIELECTRICS = {
  written: {},
  murata: { R7: 'X7R', R6: 'X5R', '5C': 'C0G', C7: 'X7S', C8: 'X6S', D7: 'X7T', F5: 'Y5V', '7U': 'U2J', '1X': 'SL', '2C': 'CH', '3C': 'CJ', B1: 'JIS B', B3: 'JIS B', R1: 'JIS R' },
  samsung: { C: 'C0G', A: 'X5R', B: 'X7R', X: 'X6S', F: 'Y5V', Y: 'X7S', Z: 'X7T' },
  kemet: { G: 'C0G', R: 'X7R', P: 'X5R', U: 'Z5U', V: 'Y5V', S: 'X7S', W: 'X6S', H: 'X8R' },
  avx: { A: 'C0G', C: 'X7R', D: 'X5R', F: 'X8R', G: 'Y5V', W: 'X6S', Z: 'X7S', E: 'Z5U' },
  multicomp: { N: 'C0G', B: 'X7R', F: 'Y5V', X: 'X5R' },
  taiyo: { B7: 'X7R', BJ: 'X5R', F: 'Y5V', CG: 'C0G', CH: 'CH', C7: 'X7S', C6: 'X6S' },
  vj: { A: 'C0G', Y: 'X7R', V: 'Y5V' },
  walsin: { B: 'X7R', X: 'X5R', N: 'C0G', F: 'Y5V' },
} as const satisfies Readonly<Record<string, Readonly<Record<string, string>>>>;

/** Imperial sizes by a maker's size code. */
export const SIZES = {
  imperial: {},
  metric: {},
  panasonic: { '1R': '0201', '1G': '0201', '2R': '0402', '2G': '0402', '3R': '0603', '3E': '0603', '3G': '0603', P03: '0603', 3: '0603', 6: '0805', P06: '0805', 8: '1206', P08: '1206', 14: '1210', P14: '1210', 12: '1812', '1T': '2512' },
  koa: { '1F': '01005', '1H': '0201', '1E': '0402', '1J': '0603', '2A': '0805', '2B': '1206', '2E': '1210', '2H': '2010', W2H: '2010', '3A': '2512', W3A: '2512' },
  murata: { '02': '01005', '03': '0201', '05': '0202', '08': '0303', 15: '0402', 18: '0603', 21: '0805', 22: '1111', 31: '1206', 32: '1210', 42: '1808', 43: '1812', 52: '2211', 55: '2220' },
  samsung: { '02': '01005', '03': '0201', '05': '0402', 10: '0603', 21: '0805', 31: '1206', 32: '1210', 42: '1808', 43: '1812', 55: '2220' },
  rohm: { '006': '0201', '01': '0402', '03': '0603', 10: '0805', 18: '1206', 25: '1210', 50: '2010', 100: '2512' },
  era: { '2A': '0402', '3A': '0603', '6A': '0805', '8A': '1206' },
  susumu: { '0510': '0402', '0816': '0603', 1005: '0402', 1220: '0805', 1608: '0603', 2012: '0805', 3216: '1206' },
  cga: { 2: '0402', 3: '0603', 4: '0805', 5: '1206', 6: '1210', 8: '1812', 9: '2220' },
  // tantalum cases whose letter most makers share
  cases: { A: 'EIA-3216', B: 'EIA-3528', C: 'EIA-6032', D: 'EIA-7343', X: 'EIA-7343' },
  arrays: { YC164: '4x0603', YC124: '4x0402', CAY16: '4x0603', CAT16: '4x0603', CAY10: '4x0402', CAT10: '4x0402', EXB38V: '4x0603', EXB28V: '4x0402' },
  taiyo: { '042': '01005', '063': '0201', 105: '0402', 107: '0603', 212: '0805', 316: '1206', 325: '1210', 432: '1812' },
} as const satisfies Readonly<Record<string, Readonly<Record<string, string>>>>;

/**
 * A maker's ordering code. Groups of the pattern name what they hold: `size`, `tolerance` (a letter of IEC 60062), `rkm` or `code`
 * (three or four digits), `uniroyal`, `micro` (figures in µF) or `henry` (in µH, or `N` as a point in nH) for the value, `voltage`, `dielectric`, `watts`, `zener`. A row is all that a new family needs.
 * Grammars and their sources: maker's sheets as named in outside/ordering-codes/SOURCE.md; rows marked [M] are from memory.
 */
export interface OrderingCodeRow {
  readonly maker: string;
  readonly family: string;
  readonly kind: Kind;
  readonly pattern: RegExp;
  readonly sizes?: keyof typeof SIZES;
  readonly volts?: keyof typeof VOLTS;
  readonly dielectrics?: keyof typeof DIELECTRICS;
  /** up to and with this capacitance in pF the tolerance letters B C D F are absolute (makers differ at exactly 10 pF) */
  readonly technology?: string;
}

const CHIP = '0075|0100|01005|0201|0402|0603|0805|1206|1210|1218|1812|2010|2512';

export const ORDERING_CODES: readonly OrderingCodeRow[] = [
  { maker: 'Yageo', family: 'RC_L', kind: 'resistor', sizes: 'imperial', technology: 'thick-film', pattern: new RegExp(`^RC(?<size>${CHIP})(?<tolerance>[BDFJ])[RKS]-(?:07|10|13|7W|7N|3W)(?<rkm>[0-9RKM]{2,5})L$`) },
  { maker: 'Yageo', family: 'AC', kind: 'resistor', sizes: 'imperial', technology: 'thick-film', pattern: new RegExp(`^AC(?<size>${CHIP})(?<tolerance>[BDFJ])[RKS]-(?:07|10|13|7W|7N|3W)(?<rkm>[0-9RKM]{2,5})L$`) }, // [M]
  { maker: 'Yageo', family: 'RT', kind: 'resistor', sizes: 'imperial', technology: 'thin-film', pattern: new RegExp(`^RT(?<size>${CHIP})(?<tolerance>[WBCDF])[RK][BCDE](?:07|10|13)(?<rkm>[0-9RKM]{2,5})L$`) },
  { maker: 'Vishay', family: 'CRCW e3', kind: 'resistor', sizes: 'imperial', technology: 'thick-film', pattern: new RegExp(`^CRCW(?<size>${CHIP})(?<rkm>0000|[0-9RKM]{4})(?<tolerance>[DFJZ])[KNS0]?E[A-Z]C?(?:HP)?$`) },
  { maker: 'Panasonic', family: 'ERJ', kind: 'resistor', sizes: 'panasonic', technology: 'thick-film', pattern: /^ERJ-?(?<size>P0[368]|P14|1[RGT]|2[RG]|3[REG]|14|12|[368])(?:[A-Z]{0,3})(?<tolerance>[DFJ])(?<code>\d{3,4}|\d{0,2}R\d{1,3})[VXUCY]$/ },
  { maker: 'KOA', family: 'RK73', kind: 'resistor', sizes: 'koa', technology: 'thick-film', pattern: /^RK73[HB](?<size>1F|1H|1E|1J|2A|2B|2E|2H|W2H|3A|W3A)[TLG]?T[XCPDE](?<code>\d{3,4}|\d{0,3}R\d{0,3})(?<tolerance>[DFGJ])$/ },
  { maker: 'Bourns', family: 'CR', kind: 'resistor', sizes: 'imperial', technology: 'thick-film', pattern: new RegExp(`^CRM?(?<size>${CHIP})-(?<tolerance>[FJ])[XWZ/]-(?<code>\\d{3,4}|\\d{0,3}R\\d{0,3})[EG]LF$`) },
  { maker: 'UNI-ROYAL', family: 'chip', kind: 'resistor', sizes: 'imperial', technology: 'thick-film', pattern: new RegExp(`^(?<size>${CHIP})(?:W[A-Z0-9]|S[A-Z0-9])(?<tolerance>[DFGJ])(?<uniroyal>\\d{3}[0-9JKL])T[1-5CDE]E$`) },
  { maker: 'Stackpole', family: 'RMCF', kind: 'resistor', sizes: 'imperial', technology: 'thick-film', pattern: new RegExp(`^RMCF(?<size>${CHIP})(?<tolerance>[FGJ])T(?<rkm>[0-9RKM]{3,5})$`) }, // [M]
  { maker: 'Rohm', family: 'MCR', kind: 'resistor', sizes: 'rohm', technology: 'thick-film', pattern: /^MCR(?<size>006|01|03|10|18|25|50|100)(?:EZP|ERT|MZP|ERTP?|EZH)(?<tolerance>[DFJ])X?(?<code>\d{3,4}|\d{0,2}R\d{1,3})$/ }, // [M]
  { maker: 'Rohm', family: 'ESR', kind: 'resistor', sizes: 'rohm', technology: 'thick-film', pattern: /^ESR(?<size>01|03|10|18|25)(?:EZP|MZP)(?<tolerance>[DFJ])(?<code>\d{3,4}|\d{0,2}R\d{1,3})$/ }, // [M]
  { maker: 'TE', family: 'CRG', kind: 'resistor', sizes: 'imperial', technology: 'thick-film', pattern: new RegExp(`^CRGC?Q?(?<size>${CHIP})(?<tolerance>[FJ])(?<rkm>[0-9RKM]{2,5})$`) }, // [M]
  { maker: 'Murata', family: 'GRM', kind: 'capacitor', sizes: 'murata', volts: 'eia', dielectrics: 'murata', technology: 'ceramic', pattern: /^G(?:RM|RJ|RT|CM|CJ|CG)(?<size>\d\d)[235689ABCDEMNRX](?<dielectric>[A-Z0-9]{2})(?<voltage>[0-3][A-Z]|YA)(?<code>\d{3}|\dR\d|R\d\d)(?<tolerance>[BCDFGJKMWZ])[A-Z0-9]{3}[A-Z]$/ },
  { maker: 'Samsung', family: 'CL', kind: 'capacitor', sizes: 'samsung', volts: 'samsung', dielectrics: 'samsung', technology: 'ceramic', pattern: /^CL(?<size>\d\d)(?<dielectric>[CABXFYZ])(?<code>\d{3}|\dR\d|R\d\d)(?<tolerance>[BCDFGJKMZ])(?<voltage>[RQPOALBCDEGHIJK])[A-Z0-9][A-Z0-9]{3,4}$/ },
  { maker: 'TDK', family: 'C', kind: 'capacitor', sizes: 'metric', volts: 'eia', dielectrics: 'written', technology: 'ceramic', pattern: /^C(?<size>0402|0603|1005|1608|2012|3216|3225|4520|4532|5750)(?<dielectric>X7R|X5R|X7S|X6S|X7T|C0G|CH|NP0|JB|Y5V)(?<voltage>[0-3][A-Z]|YA)(?<code>\d{3}|\dR\d|R\d\d)(?<tolerance>[BCDFGJKMZ])\d{3}[A-Z][A-Z]$/ },
  { maker: 'KEMET', family: 'C', kind: 'capacitor', sizes: 'imperial', volts: 'kemet', dielectrics: 'kemet', technology: 'ceramic', pattern: /^C(?<size>0201|0402|0603|0805|1206|1210|1808|1812|1825|2220|2225)[CX](?<code>\d{3})(?<tolerance>[BCDFGJKMZ])(?<voltage>[0-9AC])(?<dielectric>[GRPUVSWH])A?C(?:TU|[0-9]{4}|AUTO)?$/ },
  { maker: 'KYOCERA AVX', family: 'MLCC', kind: 'capacitor', sizes: 'imperial', volts: 'avx', dielectrics: 'avx', technology: 'ceramic', pattern: /^(?<size>0201|0402|0603|0805|1206|1210|1808|1812|1825|2220|2225)(?<voltage>[46ZY3D512V7CA])(?<dielectric>[ACDFGWZE])(?<code>\d{3}|\dR\d|R\d\d)(?<tolerance>[BCDFGJKMZ])[A4][TZ0-9][24A-Z0-9]A$/ },
  { maker: 'Yageo', family: 'CC', kind: 'capacitor', sizes: 'imperial', volts: 'yageo', dielectrics: 'written', technology: 'ceramic', pattern: /^CC(?<size>0201|0402|0603|0805|1206|1210|1808|1812|2220)(?<tolerance>[ABCDEFGJKMZ])[RKPC](?<dielectric>X7R|X5R|Y5V|NPO|X6S|X7S)(?<voltage>[0-9A-EGYZ])B[BN](?<code>\d{3}|\dR\d|R\d\d)$/ },
  { maker: 'Multicomp', family: 'MC', kind: 'capacitor', sizes: 'imperial', volts: 'digits', dielectrics: 'multicomp', technology: 'ceramic', pattern: /^MC(?<size>0402|0603|0805|1206|1210|1812)(?<dielectric>[NBFX])(?<code>\d{3}|\dR\d|R\d\d)(?<tolerance>[BCDFGJKMZ])(?<voltage>\d{3})[CL]T$/ },
  { maker: 'Walsin', family: 'MLCC', kind: 'capacitor', sizes: 'imperial', volts: 'digits', dielectrics: 'walsin', technology: 'ceramic', pattern: /^(?<size>0402|0603|0805|1206|1210|1812)(?<dielectric>[NBFX])(?<code>\d{3}|\dR\d|R\d\d)(?<tolerance>[BCDFGJKMZ])(?<voltage>\d{3})[CL]T$/ }, // [M]
  { maker: 'Taiyo Yuden', family: 'MK', kind: 'capacitor', sizes: 'taiyo', volts: 'taiyo', dielectrics: 'taiyo', technology: 'ceramic', pattern: /^(?<voltage>[AJLETGUHQS])MK(?<size>042|063|105|107|212|316|325|432)(?<dielectric>B7|BJ|F|CG|CH|C7|C6)(?<code>\d{3}|\dR\d|R\d\d)(?<tolerance>[BCDFGJKMZ])[A-Z]{1,2}-?[A-Z]$/ }, // [M]
  { maker: 'Rohm', family: 'KTR', kind: 'resistor', sizes: 'rohm', technology: 'thick-film', pattern: /^KTR(?<size>03|10|18|25)EZP(?<tolerance>[DFJ])(?<code>\d{3,4}|\d{0,2}R\d{1,3})$/ }, // [M]
  { maker: 'Panasonic', family: 'ERA', kind: 'resistor', sizes: 'era', technology: 'thin-film', pattern: /^ERA-?(?<size>[2368]A)[A-Z](?<tolerance>[BCDF])(?<code>\d{3,4})[VXPC]$/ }, // [M]
  { maker: 'Susumu', family: 'RR, RG', kind: 'resistor', sizes: 'susumu', technology: 'thin-film', pattern: /^R[RG](?<size>0510|0816|1005|1220|1608|2012|3216)[PQNV]-(?<code>\d{3,4})-(?<tolerance>[WBCDF])(?:-[A-Z]\d{1,2})?$/ }, // [M]
  { maker: 'Vishay', family: 'TNPW', kind: 'resistor', sizes: 'imperial', technology: 'thin-film', pattern: new RegExp(`^TNPW(?<size>${CHIP})(?<rkm>[0-9RKM]{4})(?<tolerance>[BCDF])[EHXYZ]E[A-Z]$`) }, // [M]
  { maker: 'Vishay', family: 'MCT', kind: 'resistor', sizes: 'imperial', technology: 'thin-film', pattern: /^MCT(?<size>0402|0603|0805|1206)0C(?<code>\d{3}[0-7])(?<tolerance>[DF])P[1-9W]00$/ }, // [M]
  { maker: 'Vishay', family: 'WSL', kind: 'resistor', sizes: 'imperial', pattern: /^WSL(?<size>0603|0805|1206|2010|2512|2816)(?<rkm>R\d{4})(?<tolerance>[DFGJ])E[A-Z](?:18)?$/ }, // [M]
  { maker: '', family: 'arrays of four chip resistors', kind: 'resistor-network', sizes: 'arrays', pattern: /^(?<size>YC1[26]4)-(?<tolerance>[FJ])R-(?:07|10|13)(?<rkm>[0-9RKM]{2,5})L$/ }, // [M]
  { maker: '', family: 'arrays of four chip resistors', kind: 'resistor-network', sizes: 'arrays', pattern: /^(?<size>CA[YT]1[06])-(?<code>\d{3,4})(?<tolerance>[FJ])4(?:LF)?$/ }, // [M]
  { maker: 'Panasonic', family: 'EXB', kind: 'resistor-network', sizes: 'arrays', pattern: /^(?<size>EXB-?[23]8V)(?<code>\d{3})(?<tolerance>J)[VX]$/ }, // [M]
  { maker: 'TDK', family: 'CGA', kind: 'capacitor', sizes: 'cga', volts: 'eia', dielectrics: 'written', technology: 'ceramic', pattern: /^CGA(?<size>[2-689])[A-Z][1-9](?<dielectric>X7R|X5R|X7S|X7T|X8R|C0G|NP0)(?<voltage>[0-3][A-Z])(?<code>\d{3}|\dR\d|R\d\d)(?<tolerance>[BCDFGJKM])\d{3}[A-Z][A-Z]$/ }, // [M]
  { maker: 'Vishay', family: 'VJ', kind: 'capacitor', sizes: 'imperial', volts: 'vj', dielectrics: 'vj', technology: 'ceramic', pattern: /^VJ(?<size>0402|0603|0805|1206|1210|1812)(?<dielectric>[AYV])(?<code>\d{3}|\dR\d)(?<tolerance>[BCDFGJKMZ])X(?<voltage>[QJXABC])[A-Z0-9]{2,6}$/ }, // [M]
  { maker: 'KEMET', family: 'C radial', kind: 'capacitor', volts: 'kemet', dielectrics: 'kemet', technology: 'ceramic', pattern: /^C3[1-5]\dC(?<code>\d{3})(?<tolerance>[CDFGJKMZ])(?<voltage>[512])(?<dielectric>[GRU])5[TC]A(?:\d{4})?$/ }, // [M]
  { maker: 'KEMET', family: 'T49', kind: 'capacitor', sizes: 'cases', volts: 'tantalum', technology: 'tantalum', pattern: /^T49[145](?<size>[ABCDX])(?<code>\d{3})(?<tolerance>[JKM])(?<voltage>\d{3}|[26]R[35])A[A-Z](?:[A-Z0-9]{0,6})$/ }, // [M]
  { maker: 'KYOCERA AVX', family: 'TAJ', kind: 'capacitor', sizes: 'cases', volts: 'tantalum', technology: 'tantalum', pattern: /^T(?:AJ|PS)(?<size>[ABCD])(?<code>\d{3})(?<tolerance>[JKM])(?<voltage>\d{3})[A-Z](?:NJ|\d{4})[A-Z]?$/ }, // [M]
  { maker: 'Nichicon', family: 'aluminium', kind: 'capacitor', volts: 'eia', technology: 'electrolytic', pattern: /^U(?:VR|VZ|WT|WX|UD|PW|PM|HE|KL|CL|CD)(?<voltage>[0-2][A-Z])(?<micro>\d{3}|[0R]?R?\d{2})(?<tolerance>M)[A-Z0-9]{2,6}$/ }, // [M]
  { maker: 'Panasonic', family: 'EEE, EEU', kind: 'capacitor', volts: 'eia', technology: 'electrolytic', pattern: /^EE[EU]-?(?:FK|FC|FP|FT|FR|FM|FS|HA|HB|TG|TK)A?(?<voltage>[0-2][A-Z])(?<micro>\d{3}|\dR\d|R\d{2})[A-Z0-9]{0,3}$/ }, // [M]
  { maker: 'Panasonic', family: 'ECA', kind: 'capacitor', volts: 'eia', technology: 'electrolytic', pattern: /^ECA-?(?<voltage>[0-2][A-Z])(?:M|HG|AM)(?<micro>\d{3}|\dR\d|R\d{2})[A-Z]{0,2}$/ }, // [M]
  { maker: 'Yageo', family: 'MFR', kind: 'resistor', technology: 'metal-film', pattern: /^MFR-?(?:12|25|50|1W|100|200)S?(?<tolerance>[BCDFJ])[A-Z]{1,2}-?(?:52|26|73)?-(?<rkm>[0-9RKM]{2,5})$/ }, // [M]
  { maker: 'Yageo', family: 'CFR', kind: 'resistor', technology: 'carbon', pattern: /^CFR-?(?:12|25|50|1W|100|200)S?(?<tolerance>[GJ])[A-Z]{1,2}-?(?:52|26|73)?-(?<rkm>[0-9RKM]{2,5})$/ }, // [M]
  { maker: 'Murata', family: 'NCP', kind: 'thermistor', sizes: 'murata', pattern: /^NCP(?<size>03|15|18|21)X[A-Z](?<code>\d{3})(?<tolerance>[DEFHJ])\d{2}R[A-Z]$/ }, // [M]
  { maker: 'Murata', family: 'BLM', kind: 'ferrite', sizes: 'murata', pattern: /^BLM(?<size>03|15|18|21|31)[A-Z]{2}(?<code>\d{3})[SB][NHZ]\d[A-Z]$/ }, // [M]
  { maker: 'Murata', family: 'LQ', kind: 'inductor', sizes: 'murata', pattern: /^LQ[GMPW](?<size>03|15|18|21|31|32)[A-Z]{2}(?<henry>\d{2}N|\dN\d|R\d{2}|\dR\d|\d{3})(?<tolerance>[BCDGJKM])[A-Z0-9]{2}[A-Z]$/ }, // [M]
  { maker: 'TDK', family: 'MLF, MLZ', kind: 'inductor', sizes: 'metric', pattern: /^ML[FZ](?<size>1005|1608|2012)[A-Z](?<henry>R\d{2}|\dR\d|\d{3})(?<tolerance>[JKM])T[A-Z0-9]{3}$/ }, // [M]
  { maker: 'Bourns', family: 'SR', kind: 'inductor', pattern: /^SR[RNPU]\d{4}[A-Z]{0,2}-(?<henry>R\d{2}|\dR\d|\d{3})(?<tolerance>[JKM])$/ }, // [M]
  { maker: '', family: 'zener of the BZX and BZT series', kind: 'zener', pattern: /^BZ[XTV](?:55|79|84|85|52|384|585)[-]?[BC](?<zener>\d{1,2}V\d|\d{2,3})(?:[-,.][A-Z0-9-]+|[A-Z]{0,3})?$/ }, // Pro Electron: C = 5 %, V for the point
];
