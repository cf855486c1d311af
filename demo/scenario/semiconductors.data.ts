import type { BagGroup } from './scenario.ts';

/** Box C, bags 121–180: diodes, LEDs, transistors, regulators, chips. Bags that stand in the static-safe half are in its rear. */
export const SEMICONDUCTORS: readonly BagGroup[] = [
  { kind: 'diode', delivery: 'opening-semiconductors', bags: [
    [121, '1N4148 DO-35', 100, 260], [122, '1N4148W SOD-123', 100, 290], [123, '1N4007 DO-41', 100, 270], [124, '1N5819 DO-41', 50, 320],
    [125, 'SS14 SMA', 50, 340], [126, 'SS34 SMC', 20, 310], [127, 'BAT54C SOT-23', 40, 260], [128, 'BAT54S SOT-23', 20, 150],
  ] },
  { kind: 'zener', delivery: 'opening-semiconductors', bags: [[129, 'BZX84-C3V3 SOT-23 zener 3.3V', 30, 210], [130, 'BZX84-C5V1 SOT-23 zener 5.1V', 30, 210], [131, 'zener 12V 1.3W DO-41', 25, 190]] },
  { kind: 'tvs', delivery: 'opening-semiconductors', bags: [[132, 'SMBJ15A SMB', 15, 330], [133, 'SMBJ5.0A SMB', 10, 240]] },
  { kind: 'diode', delivery: 'mains-parts', bags: [[134, 'bridge rectifier DF06M DIP-4', 10, 320]] },
  { kind: 'led', delivery: 'opening-semiconductors', bags: [
    [135, 'LED red 0805', 100, 350], [136, 'LED green 0805', 100, 350], [137, 'LED yellow 0805', 50, 220], [138, 'LED blue 0805', 12, 150], [139, 'LED white 0805', 50, 310],
    [140, 'LED red 3mm', 50, 240], [141, 'LED green 3mm', 50, 240], [142, 'LED infrared 940nm 5mm', 20, 210],
  ] },
  { kind: 'transistor', delivery: 'opening-semiconductors', bags: [
    [143, 'BC547B TO-92 NPN', 50, 290], [144, 'BC557B TO-92 PNP', 50, 290], [145, 'BC847B SOT-23 NPN', 50, 230], [146, 'BC857B SOT-23 PNP', 50, 230],
    [147, '2N3904 TO-92 NPN', 30, 210],
  ] },
  { kind: 'mosfet', delivery: 'opening-semiconductors', bags: [
    [148, '2N7002 SOT-23 N-channel', 50, 260], [149, 'AO3400A SOT-23 N-channel', 40, 380], [150, 'AO3401A SOT-23 P-channel', 30, 340], [151, 'BSS138 SOT-23 N-channel', 30, 250],
    [152, 'IRLZ44N TO-220 N-channel', 10, 790], [153, 'IRF9540N TO-220 P-channel', 6, 620],
  ] },
  { kind: 'regulator', delivery: 'opening-semiconductors', bags: [
    [155, 'MCP1700T-3302E/TT LDO 3.3V SOT-23', 30, 1140], [156, 'AMS1117-3.3 LDO 3.3V SOT-223', 20, 380], [157, '7805 TO-220 5V', 12, 540], [158, '78L05 TO-92 5V', 15, 330],
    [159, 'LM317T TO-220', 8, 490], [160, 'LM2596S-3.3 TO-263-5', 12, 1680], [161, 'TL431 SOT-23', 20, 310],
  ] },
  { kind: 'ic', delivery: 'opening-semiconductors', bags: [
    [162, 'LM358D SOIC-8', 20, 480], [163, 'LM358N DIP-8', 10, 360], [164, 'MCP6002 SOIC-8', 12, 640], [165, 'NE555 DIP-8', 15, 420],
    [166, '74HC595 SOIC-16', 15, 510], [167, '74HC14 SOIC-14', 10, 310], [168, 'ULN2003A SOIC-16', 10, 390],
  ] },
  { kind: 'ic', delivery: 'logger-parts', bags: [
    [169, 'SP3485EN SOIC-8', 15, 1180], [170, 'PCF8563T SOIC-8', 15, 1290], [171, '25LC512-I/SN SOIC-8', 14, 2840], [172, '24LC256 SOIC-8', 5, 520],
    [173, 'ATmega328P-AU TQFP-32', 16, 4320], [174, 'ATmega328P-PU DIP-28', 6, 1890], [175, 'ATtiny85-20PU DIP-8', 8, 1360], [176, 'INA226AIDGSR MSOP-10', 6, 1620],
  ] },
  { kind: 'ic', delivery: 'mains-parts', bags: [[177, 'PC817 DIP-4', 20, 380, { note: 'keeps the mains side apart: never swapped by rule' }]] },
  { kind: 'ic', delivery: 'logger-parts', bags: [[179, 'CH340C SOIC-16', 10, 720]] },
  { kind: 'sensor', delivery: 'logger-parts', bags: [[180, 'DS18B20 TO-92', 12, 1980]] },
];
