import type { Kind } from './part.ts';

/** Chip sizes, imperial name and its metric name (IEC 60115-8 / JEITA; size tables of makers and public footprint libraries). */
export const CHIP_SIZES: readonly (readonly [imperial: string, metric: string])[] = [
  ['008004', '0201'], ['01005', '0402'], ['015015', ''], ['0201', '0603'], ['0202', '0505'], ['0303', '0808'], ['0402', '1005'], ['0504', '1310'], ['0603', '1608'],
  ['0805', '2012'], ['1008', '2520'], ['1111', '2828'], ['1206', '3216'], ['1210', '3225'], ['1218', '3246'], ['1411', '3528'], ['1806', '4516'], ['1808', '4520'],
  ['1812', '4532'], ['1825', '4564'], ['2010', '5025'], ['2211', '5728'], ['2220', '5750'], ['2225', '5664'], ['2312', '6032'], ['2413', '6134'],
  ['2512', '6332'], ['2816', '7142'], ['2917', '7343'], ['3640', '9110'], ['0612', '1632'], ['0306', '0816'], ['0508', '1220'], ['2515', '6440'], ['2728', '7072'],
];

/** Other metric spellings of the same imperial sizes that libraries and makers use. */
export const METRIC_ALSO: Readonly<Record<string, string>> = {
  '2013': '0805', '2125': '0805', '6432': '2512', '6330': '2512', '5650': '2220', '5751': '2220', '4563': '1825', '3217': '1206', '4832': '1812', '1508': '0603',
};

/** Sizes that are plain metric when nothing else is said: their imperial namesakes are hardly ever met. */
export const METRIC_WHEN_ALONE = '1005 1608 2012 2125 3216 3225 4516 4520 4532 5025 5750 6332 6432';

/** LEDs and crystals keep their metric size as their name. */
export const METRIC_BODIES = '2016 2520 2835 3014 3020 3215 3225 3528 5032 5050 5630 5730 7050 8038 6035 1612 2012 4115 3838 1010 2020 4014 7020 3535 3030';

/** Tantalum and polymer cases: metric body, height in tenths of a millimetre, and the case letter most makers agree on. */
export const TANTALUM_CASES: readonly (readonly [metric: string, letter: string | null])[] = [
  ['1608', 'J'], ['2012', 'P'], ['3216', 'A'], ['3528', 'B'], ['6032', 'C'], ['7343', 'D'], ['7360', null], ['7361', null], ['7260', null],
];

/** Families whose name is followed (or preceded) by a count of pins; the first spelling is the one that is written. */
export const PIN_FAMILIES: readonly (readonly [name: string, spellings: string])[] = [
  ['DIP', 'PDIP DIP DIL PDIL CDIP CERDIP SDIP SPDIP HDIP'], ['SIP', 'SIP SIL'],
  ['SOIC', 'SOIC SOICN SOICW WSOIC SO SOL HSOIC CSOIC SOWIDE SOICWIDE'],
  ['SOP', 'SOP HSOP PSOP ESOP'], ['SOJ', 'SOJ'],
  ['SSOP', 'SSOP SSO'], ['QSOP', 'QSOP'], ['TSSOP', 'TSSOP HTSSOP ETSSOP'], ['TSOP', 'TSOP TSOPI TSOPII'], ['MSOP', 'MSOP UMAX µMAX MICRO8'], ['VSSOP', 'VSSOP HVSSOP'],
  ['LQFP', 'LQFP HLQFP'], ['TQFP', 'TQFP HTQFP TQ'], ['QFP', 'QFP PQFP MQFP'], ['VQFP', 'VQFP'],
  ['QFN', 'QFN MLF MLP HVQFN PQFN'], ['VQFN', 'VQFN'], ['WQFN', 'WQFN'], ['UQFN', 'UQFN'], ['TQFN', 'TQFN'], ['XQFN', 'XQFN'], ['HQFN', 'HQFN'],
  ['DFN', 'DFN UDFN'], ['TDFN', 'TDFN'], ['WDFN', 'WDFN'], ['SON', 'SON'], ['WSON', 'WSON'], ['VSON', 'VSON'], ['USON', 'USON'], ['X2SON', 'X2SON'],
  ['LFCSP', 'LFCSP'], ['WLCSP', 'WLCSP DSBGA'], ['CSP', 'CSP'], ['LCC', 'LCC'], ['PLCC', 'PLCC'], ['CLCC', 'CLCC'], ['LGA', 'LGA'],
  ['BGA', 'BGA'], ['FBGA', 'FBGA'], ['TFBGA', 'TFBGA'], ['UFBGA', 'UFBGA'], ['VFBGA', 'VFBGA'], ['LFBGA', 'LFBGA'], ['PGA', 'PGA'], ['SC-70', 'SC-70'],
];

/**
 * Outlines by name. The first column is the name that is written, the second the spellings met, without dashes and blanks; a
 * count of pins of 2 or 3 behind them is left out, more are kept (`SOT-23-5`). `of` says for which kinds a short name counts.
 * Same outline under JEDEC, JEITA and makers' names: public footprint libraries, maker tables.
 */
export const OUTLINES: readonly (readonly [name: string, spellings: string, of?: readonly Kind[]])[] = [
  ['SOT-23', 'SOT23 TO236AB TO236 SUPERSOT3 SOT233 MICRO3'], ['SOT-23-5', 'SOT25 SC74A SOT235 SOT23-5 SOT753 MO178AA'], ['SOT-23-6', 'SOT26 SOT236 SOT23-6 SOT457 MO178AB SC74'], ['SOT-23-8', 'SOT238 SOT28 MO178BA'],
  ['TSOT-23-5', 'TSOT23-5 TSOT25 TSOT235 THINSOT5 MO193AB'], ['TSOT-23-6', 'TSOT23-6 TSOT26 TSOT236 SUPERSOT6 MO193AA'], ['TSOT-23-8', 'TSOT23-8 TSOT28 MO193BA'], ['TSOT-23', 'TSOT23'],
  ['SC-59', 'SC59 SOT346'], ['SOT-143', 'SOT143 SOT143B TO253 TO253AA SC61'], ['SOT-323', 'SOT323'], ['SC-70', 'SC70 SC703 UMT3'], ['SC-70-5', 'SC70-5 SC705 SC88A MO203AA'], ['SOT-353', 'SOT353'], ['SC-70-6', 'SC70-6 SC706 MO203AB UMT6'],
  ['SOT-363', 'SOT363 SC88'], ['SOT-416', 'SOT416 SC75 SC75A'], ['SOT-523', 'SOT523'], ['SOT-553', 'SOT553'], ['SOT-563', 'SOT563'], ['SOT-623', 'SOT623'], ['SOT-666', 'SOT666'], ['SOT-723', 'SOT723'], ['SOT-886', 'SOT886'], ['SOT-883', 'SOT883'],
  ['SOT-89', 'SOT89 TO243 TO243AA SC62 UPAK'], ['SOT-223', 'SOT223 TO261 TO261AA SC73'], ['SOT-227', 'SOT227'], ['SOT-227B', 'SOT227B'], ['SOT-54', 'SOT54'],
  ['TO-92', 'TO92 TO226AA TO226 SC43 SC43A TO92L'], ['TO-126', 'TO126 TO225AA TO225 SOT32'], ['TO-220', 'TO220 TO220AB TO220AC TO220W SC46 SOT78'], ['TO-220F', 'TO220F TO220FP TO220FULLPAK ITO220'], ['TO-247', 'TO247 TO247AC SOT429'], ['TO-218', 'TO218'], ['TO-264', 'TO264'],
  ['TO-252', 'TO252 TO252AA SC63 SOT428'], ['DPAK', 'DPAK'], ['TO-263', 'TO263 TO263AB SC83A SOT404'], ['D2PAK', 'D2PAK DDPAK'], ['D3PAK', 'D3PAK TO268'], ['TO-277', 'TO277 TO277A'],
  ['TO-3', 'TO3'], ['TO-3P', 'TO3P TO3PN TO3PF'], ['TO-5', 'TO5'], ['TO-18', 'TO18'], ['TO-39', 'TO39'], ['TO-46', 'TO46'], ['TO-66', 'TO66'], ['TO-72', 'TO72'], ['TO-99', 'TO99'], ['TO-100', 'TO100'], ['TO-202', 'TO202'], ['TO-251', 'TO251 IPAK'], ['TO-262', 'TO262 I2PAK'],
  ['TO-50', 'TO50'], ['TO-46', 'TO46'], ['TO-94', 'TO94'],
  ['SMA', 'DO214AC SMAFLAT'], ['SMB', 'DO214AA'], ['SMC', 'DO214AB'], ['SMF', 'DO219AB'], ['SMP', 'DO220AA'],
  ['SMA', 'SMA', ['diode', 'zener', 'tvs', 'led']], ['SMB', 'SMB', ['diode', 'zener', 'tvs']], ['SMC', 'SMC', ['diode', 'zener', 'tvs']], ['SMF', 'SMF', ['diode', 'zener', 'tvs']], ['SMP', 'SMP', ['diode', 'zener', 'tvs']],
  ['SMAF', 'SMAF', ['diode', 'zener', 'tvs']], ['SMBF', 'SMBF', ['diode', 'zener', 'tvs']],
  ['SOD-123', 'SOD123'], ['SOD-123F', 'SOD123F SOD123W'], ['SOD-123FL', 'SOD123FL'], ['SOD-128', 'SOD128'], ['SOD-323', 'SOD323 SC76 UMD2'], ['SOD-323F', 'SOD323F'], ['SOD-523', 'SOD523 SC79 EMD2'], ['SOD-523F', 'SOD523F'], ['SOD-923', 'SOD923'], ['SOD-882', 'SOD882'], ['SOD-962', 'SOD962'], ['SOD-106', 'SOD106'], ['SOD-57', 'SOD57'], ['SOD-64', 'SOD64'],
  ['SOD-80', 'SOD80 SOD80C LL34 DO213AA'], ['MiniMELF', 'MINIMELF'], ['MELF', 'MELF DO213AB LL41'], ['MicroMELF', 'MICROMELF'],
  ['DO-7', 'DO7 DO204AA'], ['SOIC-8', 'MS012AA'], ['SOIC-14', 'MS012AB'], ['SOIC-16', 'MS012AC'], ['MSOP-8', 'MO187AA'], ['DO-15', 'DO15 DO204AC SOD40'], ['DO-14', 'DO14 DO204AB'], ['DO-29', 'DO29 DO204AF'], ['DO-27', 'DO27'], ['DO-34', 'DO34 DO204AG'], ['DO-35', 'DO35 DO204AH SOD27'], ['DO-41', 'DO41 DO204AL SOD66 SOD81'], ['DO-201', 'DO201'], ['DO-201AD', 'DO201AD'], ['DO-201AE', 'DO201AE'], ['DO-4', 'DO4'], ['DO-5', 'DO5'], ['P600', 'P600', ['diode', 'tvs']], ['R-6', 'R6', ['diode', 'tvs']], ['A-405', 'A405', ['diode']],
  ['DBS', 'DBS', ['diode']], ['MBS', 'MBS', ['diode']], ['ABS', 'ABS', ['diode']], ['MiniDIP', 'MINIDIP MINIDIL'],
  ['PowerDI-123', 'POWERDI123'], ['PowerDI-323', 'POWERDI323'], ['PowerDI-5', 'POWERDI5'], ['PowerPAK-SO-8', 'POWERPAKSO8 POWERSO8 POWERPAK8'], ['LFPAK', 'LFPAK LFPAK56'],
  ['HC-49', 'HC49'], ['HC-49U', 'HC49U HC49UP HC49UV HC49UH'], ['HC-49S', 'HC49S'], ['HC-49US', 'HC49US HC49USM'], ['HC-49SD', 'HC49SD'], ['HC-49-4H', 'HC494H'], ['HC-18U', 'HC18U'], ['HC-33U', 'HC33U'], ['HC-51', 'HC51'], ['HC-52', 'HC52'],
  ['AT310', 'AT310'], ['AT26', 'AT26'], ['MC-306', 'MC306'], ['MC-146', 'MC146'], ['MC-405', 'MC405'],
  ['PLCC-2', 'PLCC2', ['led']], ['PLCC-4', 'PLCC4', ['led']], ['PLCC-6', 'PLCC6', ['led']],
];

/** How footprint and symbol names of libraries begin, as evidence of kind. Compared with the name in upper case. */
export const FOOTPRINT_KINDS: readonly (readonly [pattern: RegExp, kind: Kind, weight: number])[] = [
  [/^(?:R|RES|RESISTOR|RESC|M?R-(?:EU|US))(?=[_\-\d.]|$|C\d|MELF|AD\d)/, 'resistor', 4], [/^RESISTOR|^RES[-_]/, 'resistor', 4], [/R_ARRAY|R_PACK|RES_ARRAY|RESCA|RNET|R_NETWORK|CAY\d\d|ARRAY.*4X0|4X0[46]0[23]/, 'resistor-network', 6],
  [/POTENTIOM|TRIM(?:MER|POT)|RES[-_]ADJ|^POT[-_]|^RTRIM|BOURNS_33|3386|3296|ALPS_RK|RK09/, 'potentiometer', 6], [/^VARISTOR|RV_DISC|^MOV[-_]/, 'varistor', 6], [/THERMISTOR|^NTC|^PTC(?=[-_])/, 'thermistor', 6],
  [/^(?:C|CAP|CP|CAPC|CAPACITOR|CPOL|CAPAE|CAPMP|CAPPRD?|CAPRR|C-(?:EU|US)|CPOL-(?:EU|US))(?=[_\-\d.]|$)/, 'capacitor', 4], [/^(?:CAPC|CAPAE|CAPMP|CPOL|CAP)\d|^CAP|^CPOL|^CP_|^C-(?:EU|US)|PANASONIC_[A-H]\b|^SMC_[A-D]\b/, 'capacitor', 4], [/TANTAL|EIA-?\d{4}-\d\d/, 'capacitor', 4],
  [/^(?:L|IND|INDC|INDUCTOR|L-(?:EU|US))(?=[_\-\d.]|$)|^IND/, 'inductor', 4], [/FERRITE|^FB[-_\d]|BEAD/, 'ferrite', 5], [/TRANSFORMER|TRAFO|^XFMR/, 'transformer', 6],
  [/^(?!D[23]PAK)(?:D|DIO|DIODE|DIOM|SOD|DO)(?=[_\-\d]|$)|^DIO(?:DE|[CM]\d|MELF|AD\d)/, 'diode', 4], [/ZENER/, 'zener', 5], [/^LED|CHIPLED|CHIP-LED|_LED_|[-_]LED\d|NEOPIXEL|WS2812|SK6812/, 'led', 6],
  [/CRYSTAL|XTAL|^HC-?49|^QS(?=\d|$)|RESONATOR|^QUARZ/, 'crystal', 5], [/OSCILLATOR|^OSC[-_]/, 'oscillator', 6],
  [/PIN_?HEADER|PIN_?SOCKET|PINHD|PINHEAD|^HDR|^HEADER|^1X\d\d?|^2X\d\d?|SOCKET_?STRIP|^MA\d\d-\d|IDC|BOX_?HEADER|SIL-?\d/, 'header', 5],
  [/CONN(?!ECTION)|TERMINAL|JST|MOLEX|PHOENIX|MSTB|MKDS|USB|BARREL|JACK|RJ-?[14]|DSUB|D-SUB|BNC|^SMA[-_](?:EDGE|CONN|AMPH)|HIROSE|TB_|FFC|FPC|SCREW_?TERM|COAX|SAMTEC|WAGO|AMPHENOL|XT60|CON[-_]/, 'connector', 4],
  [/BUTTON|SWITCH|^SW[-_]|TACT(?:ILE)?|PUSH|^KEY[-_]|ENCODER|^B3[FSU]|PTS\d{3}|KMR\d|SKQG|TL3305/, 'switch', 5],
  [/RELAY/, 'relay', 6], [/^FUSE|FUSEHOLDER|^F_/, 'fuse', 6], [/BATTERY|BATT|BAT-?HLD|CR2032|CR1220|KEYSTONE_30|BATHOLD/, 'battery', 6],
  [/TEST_?POINT|^TP(?=[-_\d]|$)|TEST_?PAD/, 'testpoint', 6], [/MOUNTING_?HOLE|^HOLE/, 'not-a-part', 9], [/FIDUCIAL|^FID(?=[-_\d])/, 'not-a-part', 9], [/LOGO/, 'not-a-part', 9],
  [/SOLDER_?JUMPER|SOLDER_?BRIDGE|^SJ(?=[-_\d]|$)|JUMPER/, 'jumper', 5], [/BUZZER|SPEAKER|PIEZO/, 'speaker', 6], [/HEAT_?SINK|DISIPADOR|KUEHLKOERPER/, 'mechanical', 6],
  [/^MODULE|ESP-?12|ESP32-WROOM|ESP-WROOM|ARDUINO|RASPBERRY|XBEE|DEVKIT/, 'module', 5], [/DISPLAY|^LCD|OLED|7SEG|SEVEN_?SEG/, 'display', 5], [/MICROPHONE|SENSOR|BME280|DHT/, 'sensor', 4],
  [/DIP|SOIC|SSOP|TSSOP|QFN|QFP|BGA|MSOP|PLCC|DFN|WSON|LGA|SOP-/, 'ic', 2], [/OPTO/, 'ic', 4],
];

/** Makers whose ceramic capacitors carry the metric size in their number: `C0603` of theirs is 0201. */
export const METRIC_MAKERS = /\bTDK\b/i;

/** The standard bodies of axial resistors (DIN 44061 size names, as libraries write them). */
export const AXIAL_SIZES = '0204 0207 0309 0411 0414 0516 0614 0617 0918 0922';

/** Battery sizes that are packages of their own. */
export const BATTERY_SIZES = /(?<![A-Z0-9])(CR\d{3,4}|LR\d{2,4}|18650|21700|14500|16340|AAA|AA|9V|PP3|6F22|SR\d{3}|BR\d{4}|ML\d{4})(?![A-Z0-9])/;
