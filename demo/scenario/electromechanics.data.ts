import type { BagGroup } from './scenario.ts';

/** Box D, bags 181–240: connectors, switches, relays, fuses, cells, crystals, coils, modules. */
export const ELECTROMECHANICS: readonly BagGroup[] = [
  { kind: 'header', delivery: 'opening-connectors', bags: [
    [181, 'pin header 1x40 2.54mm', 20, 480], [182, 'pin header 1x4 2.54mm', 50, 310], [183, 'pin header 1x8 2.54mm', 30, 260], [184, 'pin header 2x3 2.54mm', 50, 420],
    [185, 'box header 2x5 2.54mm', 15, 390], [186, 'socket strip 1x16 2.54mm', 10, 420], [187, 'socket strip 1x8 2.54mm', 20, 520],
  ] },
  { kind: 'jumper', delivery: 'opening-connectors', bags: [[188, 'jumper cap 2.54mm black', 50, 190]] },
  { kind: 'connector', delivery: 'opening-connectors', bags: [
    [189, 'screw terminal 2 pin 5.08mm', 60, 1490], [190, 'screw terminal 3 pin 5.08mm', 20, 640], [191, 'screw terminal 2 pin 3.5mm', 30, 780], [192, 'screw terminal 3 pin 3.5mm', 30, 960],
    [193, 'screw terminal 4 pin 3.5mm', 25, 1120],
    [195, 'XH header 2 pin 2.5mm', 40, 360], [196, 'XH header 4 pin 2.5mm', 40, 480], [197, 'DC jack 2.1mm board', 15, 540], [198, 'USB-C receptacle 16 pin board', 10, 780],
    [199, 'BNC socket board', 4, 640], [200, 'SMA socket board edge', 6, 1140],
  ] },
  { kind: 'connector', delivery: 'mains-parts', bags: [[194, 'screw terminal 2 pin 7.62mm', 12, 520, { note: 'for the mains side' }]] },
  { kind: 'connector', delivery: 'opening-connectors', bags: [[201, 'IC socket 8 pin DIP-8', 20, 290], [202, 'IC socket 14 pin DIP-14', 20, 340], [203, 'IC socket 28 pin DIP-28 narrow', 10, 380]] },
  { kind: 'switch', delivery: 'opening-connectors', bags: [[204, 'tactile switch 6x6mm', 60, 540], [205, 'tactile switch 6x6mm 9.5mm tall', 30, 330], [206, 'slide switch SPDT 2.54mm', 20, 410], [207, 'rotary encoder with push switch', 6, 690]] },
  { kind: 'relay', delivery: 'mains-parts', bags: [[208, 'relay 5V SPDT 10A', 8, 1240, { note: 'contacts may be at the mains' }], [209, 'relay 12V SPDT 10A', 5, 790]] },
  { kind: 'fuse', delivery: 'mains-parts', bags: [
    [210, 'fuse T 100mA 250V 5x20', 20, 480, { note: 'replaced only by the same: current, speed, breaking capacity' }],
    [211, 'fuse T 2A 250V 5x20', 20, 440, { note: 'replaced only by the same' }], [212, 'fuse F 500mA 250V 5x20', 10, 230, { note: 'replaced only by the same' }],
    [214, 'PPTC 500mA 1206', 25, 620], [215, 'PPTC 1.1A 1812', 10, 390],
  ] },
  { kind: 'connector', delivery: 'mains-parts', bags: [[213, 'fuse holder 5x20', 15, 690]] },
  { kind: 'battery', delivery: 'logger-parts', bags: [[216, 'CR2032 coin cell 3V', 20, 780, { note: 'lithium: apart from metal, poles covered, out of the reach of children; never solder to the bare cell' }]] },
  { kind: 'battery', delivery: 'logger-parts', bags: [[217, 'coin cell holder 20mm', 15, 720], [218, 'battery holder 3xAA', 8, 920]] },
  { kind: 'crystal', delivery: 'logger-parts', bags: [[219, '32.768kHz 12.5pF cylinder', 20, 520], [220, '8MHz 18pF HC-49S', 15, 390], [221, '16MHz 18pF HC-49S', 15, 390]] },
  { kind: 'inductor', delivery: 'logger-parts', bags: [[222, '10uH 1A 6x6mm', 15, 640], [223, '47uH shielded 12x12', 20, 1880, { note: 'the bag does not say for how many amperes' }]] },
  { kind: 'ferrite', delivery: 'logger-parts', bags: [[224, 'ferrite bead 600R 500mA 0805', 50, 310]] },
  { kind: 'transformer', delivery: 'mains-parts', bags: [[225, 'transformer 230V 9V 3VA EI-30', 3, 1980, { note: 'mains' }]] },
  { kind: 'speaker', delivery: 'logger-parts', bags: [[226, 'buzzer active 5V 12mm', 8, 540]] },
  { kind: 'display', delivery: 'logger-parts', bags: [[227, 'OLED 0.96 inch 128x64 module', 4, 1890], [228, 'LCD 16x2', 4, 2160]] },
  { kind: 'module', delivery: 'logger-parts', bags: [[229, 'BME280 module 3.3V', 6, 2880]] },
  { kind: 'testpoint', delivery: 'opening-connectors', bags: [[230, 'test point loop red', 50, 490], [231, 'test point loop black', 50, 490]] },
];
