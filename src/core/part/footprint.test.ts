import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from './read-part.ts';

/** Package, reference, value and the name of the footprint: our own inventions in the styles of libraries, catalogues and lists. */
const NAMES = `
0402 | R1 | 10k | RESC1005X40N
0603 | R1 | 10k | RESC1608X55N
0805 | R1 | 10k | RESC2012X60N
1206 | R1 | 10k | RESC3216X70N
1206 | R1 | 10k | RESC3216N
1206 | R1 | 10k | RESC3216M
2512 | R1 | 10k | RESC6332X65N
2512 | R1 | 10k | RESC6432X65N
2010 | R1 | 10k | RESC5025X60N
1210 | R1 | 10k | RESC3225X60N
0201 | R1 | 10k | RESC0603X25N
0805 | R1 | 10k | RES_RESC2012X70L
0402 | C1 | 100n | CAPC1005X55N
0603 | C1 | 100n | CAPC1608X90N
0603 | C1 | 100n | CAPC1608X95L
0805 | C1 | 100n | CAPC2012X130N
0805 | C1 | 100n | CAPC2013X130N
0805 | C1 | 100n | CAPC2125X130N
1210 | C1 | 10u | CAPC3225X270N
1812 | C1 | 10u | CAPC4532X280N
2220 | C1 | 10u | CAPC5750X280N
0603 | C1 | 100n | C0603
0805 | C1 | 100n | CAPC0805(2012)80_N
0603 | L1 | 10u | INDC1608X95N
1008 | L1 | 10u | INDC2520X100N
0603 | D1 | red | LEDC1608X75N
0805 | D1 | red | LEDC2012X110N
0603 | D1 | BAT54 | DIOC1608X84N
1206 | F1 | 500mA | FUSC3216X110N
EIA-3216 | C1 | 10u 16V | CAPMP3216X180N
EIA-3528 | C1 | 10u 16V | CAPMP3528X210N
EIA-7343 | C1 | 100u 16V | CAPMP7343X310N
EIA-6032 | C1 | 100u 16V | CAPMP6032X280N
SMA | D1 | SS14 | DIOM5226X230N
SMA | D1 | SS14 | DIOM5226X270N
SMA | D1 | SS14 | DIOM5025X230N
SMB | D1 | SS24 | DIOM5436X244N
SMB | D1 | SS24 | DIOM5336X265N
SMC | D1 | SS34 | DIOM7959X262N
SMC | D1 | SS34 | DIOM8059X265N
SOD-123 | D1 | 1N4148W | SOD3715X135N
SOD-123 | D1 | 1N4148W | SOD3716X135N
SOD-323 | D1 | 1N4148WS | SOD2513X110N
SOD-323 | D1 | BAT54 | SOD2512X100N
SOD-523 | D1 | BAT54 | SOD1608X75N
SOD-123FL | D1 | SM4007 | SODFL3618X98N
SOD-80 | D1 | LL4148 | DIOMELF3515N
SOD-80 | D1 | LL4148 | DIOMELF3516N
MELF | D1 | SM4007 | DIOMELF5025N
SOT-23 | Q1 | BC847 | SOT95P237X112-3N
SOT-23 | Q1 | BC847 | SOT95P240X115-3N
SOT-23-5 | U1 | TLV70033 | SOT95P280X145-5N
SOT-23-6 | U1 | USBLC6-2 | SOT95P280X145-6N
SOT-23-8 | U1 | - | SOT65P280X145-8N
SC-70 | Q1 | BC847W | SOT65P210X110-3N
SC-70-5 | U1 | 74LVC1G08 | SOT65P210X110-5N
SC-70-6 | U1 | 74LVC2G14 | SOT65P210X110-6N
SOT-223 | U1 | AMS1117-3.3 | SOT230P700X180-4N
SOT-143 | Q1 | - | SOT190P237X112-4N
SOT-89 | U1 | 78L05 | SOT150P410X160-3N
SOT-563 | U1 | - | SOT50P160X60-6N
SOIC-8 | U1 | LM358 | SOIC127P600X175-8N
SOIC-14 | U1 | LM324 | SOIC127P600X175-14N
SOIC-16 | U1 | MAX232 | SOIC127P1030X265-16N
SOIC-8 | U1 | W25Q64 | SOIC127P790X216-8N
TSSOP-16 | U1 | MAX3232 | SOP65P640X120-16N
TSSOP-20 | U1 | STM32F030F4 | SOP65P640X120-20N
MSOP-8 | U1 | MCP73831 | SOP65P490X110-8N
MSOP-10 | U1 | LT3750 | SOP50P490X110-10N
SSOP-28 | U1 | FT232RL | SOP65P780X200-28N
TSSOP-28 | U1 | ADS1256 | TSSOP65P640X120-28N
QFP-48 | U1 | STM32F103C8 | QFP50P900X900X160-48N
QFP-64 | U1 | STM32F103R8 | QFP50P1200X1200X160-64N
QFP-100 | U1 | STM32F407 | QFP50P1600X1600X160-100N
QFP-32 | U1 | ATmega328P | QFP80P900X900X120-32N
QFN-32 | U1 | ESP8266 | QFN50P500X500X100-33N
QFN-24 | U1 | MPU6050 | QFN50P400X400X100-25N
QFN-16 | U1 | MPU6050 | QFN50P300X300X80-17N
QFN-48 | U1 | ICE40 | QFN50P700X700X90-49N
QFN-20 | U1 | CP2102 | QFN50P400X400X100-21T240N
SON-8 | U1 | - | SON50P200X200X80-9N
SON-8 | U1 | - | SON127P600X500X80-8N
BGA-121 | U1 | LFE5 | BGA121C50P11X11_600X600X100
BGA-256 | U1 | LFE5 | BGA256C80P16X16_1400X1400X160N
DIP-8 | U1 | NE555 | DIP762W53P254L959H508Q8N
DIP-28 | U1 | ATmega328P | DIP762W53P254L3486H508Q28N
DIP-40 | U1 | Z80 | DIP1524W53P254L5210H508Q40N
PLCC-44 | U1 | AT89 | PLCC127P1750X1750X457-44N
TO-220 | U1 | 7805 | TO254P1054X470X1955-3
TO-252 | Q1 | IRLR024 | TO228P991X255-3N
TO-263-5 | U1 | LM2596 | TO170P1435X465-6N
- | C1 | 100u 25V | CAPAE660X550N
- | C1 | 220u 25V | CAPAE830X620N
- | C1 | 100u | CAPPRD250W52D630H1125
- | C1 | 100n | CAPRR500W60L700T300H650
DIN0207 | R1 | 10k | RESAD1016W60L600D230
- | L1 | 22u | INDM6060X300N
- | Y1 | 8MHz | XTAL1140X470X430N
3225 | Y1 | 12MHz | Crystal_SMD_3225-4Pin_3.2x2.5mm
0402 | R1 | 10k | R_0402_1005Metric
0402 | R1 | 10k | Resistor_SMD:R_0402_1005Metric_Pad0.72x0.64mm_HandSolder
01005 | R1 | 10k | R_01005_0402Metric
0201 | R1 | 10k | R_0201_0603Metric
2512 | R1 | 0R01 | R_2512_6332Metric
MELF | R1 | 10k | R_MELF_MMB-0207
MiniMELF | R1 | 10k | R_MiniMELF_MMA-0204
DIN0207 | R1 | 10k | R_Axial_DIN0207_L6.3mm_D2.5mm_P10.16mm_Horizontal
DIN0411 | R1 | 10k | R_Axial_DIN0411_L9.9mm_D3.6mm_P12.70mm_Horizontal
4x0603 | RN1 | 10k | R_Array_Convex_4x0603
4x0402 | RN1 | 10k | R_Array_Concave_4x0402
SIP-9 | RN1 | 10k | R_Array_SIP9
EIA-3216 | C1 | 10u | CP_EIA-3216-18_Kemet-A
EIA-7343 | C1 | 100u | CP_EIA-7343-31_Kemet-D_Pad2.25x2.55mm_HandSolder
- | C1 | 100u | CP_Elec_6.3x5.4
- | C1 | 100u | CP_Radial_D6.3mm_P2.50mm
- | C1 | 100n | C_Disc_D5.0mm_W2.5mm_P5.00mm
SMA | D1 | SS14 | D_SMA
SMB | D1 | SMBJ5.0A | D_SMB
SMC | D1 | SMCJ24A | D_SMC_Handsoldering
SOD-123 | D1 | 1N4148W | D_SOD-123
SOD-123F | D1 | 1N4148W | D_SOD-123F
SOD-323 | D1 | 1N4148WS | Diode_SMD:D_SOD-323_HandSoldering
DO-35 | D1 | 1N4148 | D_DO-35_SOD27_P7.62mm_Horizontal
DO-41 | D1 | 1N4007 | D_DO-41_SOD81_P10.16mm_Horizontal
DO-201AD | D1 | 1N5822 | D_DO-201AD_P15.24mm_Horizontal
MiniMELF | D1 | LL4148 | D_MiniMELF
0603 | D1 | red | LED_0603_1608Metric
0805 | D1 | green | LED_SMD:LED_0805_2012Metric_Pad1.15x1.40mm_HandSolder
3mm | D1 | green | LED_D3.0mm
5mm | D1 | green | LED_THT:LED_D5.0mm_Clear
PLCC-4 | D1 | WS2812B | LED_WS2812B_PLCC4_5.0x5.0mm_P3.2mm
SOIC-8 | U1 | LM358 | SOIC-8_3.9x4.9mm_P1.27mm
SOIC-16 | U1 | MAX232 | SOIC-16W_7.5x10.3mm_P1.27mm
SOIC-8 | U1 | LM358 | SOIC-8-1EP_3.9x4.9mm_P1.27mm_EP2.29x3mm_ThermalVias
TSSOP-16 | U1 | MAX232 | TSSOP-16_4.4x5mm_P0.65mm
MSOP-10 | U1 | LT3750 | MSOP-10-1EP_3x3mm_P0.5mm_EP1.68x1.88mm
QFN-32 | U1 | ESP8266 | QFN-32-1EP_5x5mm_P0.5mm_EP3.45x3.45mm
LQFP-48 | U1 | STM32F103 | LQFP-48_7x7mm_P0.5mm
TQFP-32 | U1 | ATMEGA328P | TQFP-32_7x7mm_P0.8mm
UFBGA-100 | U1 | STM32 | UFBGA-100_7x7mm_Layout12x12_P0.5mm
SOT-23 | Q1 | BC847 | SOT-23_Handsoldering
SOT-23-5 | U1 | AP2112K-3.3 | SOT-23-5_HandSoldering
SOT-363 | Q1 | BC847BS | SOT-363_SC-70-6
TO-252 | Q1 | IRLR024 | TO-252-2
TO-220 | U1 | LM7805 | TO-220-3_Vertical
TO-92 | Q1 | BC547 | TO-92_Inline
TO-92 | Q1 | BC547 | TO-92L_Inline_Wide
DIP-8 | U1 | NE555 | DIP-8_W7.62mm
DIP-8 | U1 | NE555 | DIP-8_W7.62mm_Socket_LongPads
HC-49U | Y1 | 16MHz | Crystal_HC49-U_Vertical
HC-49US | Y1 | 16MHz | HC49US
0603 | R1 | 10k | SMD0603
0603 | R1 | 10k | R0603
0805 | R1 | 10k | RES0805
0805 | C1 | 100n | C0805K
0805 | C1 | 100n | CAP_0805
0805 | C1 | 100n | SMD_0805
0603 | C1 | 100n | 0603-CAP
0603 | R1 | 10k | 0603-RES
0603 | R1 | 10k | 0603_R
0603 | LED1 | red | LED-0603
0805 | D1 | red | CHIPLED_0805
1206 | D1 | red | CHIP-LED1206
0603 | R1 | 10k | M0603
0603 | R1 | 10k | RC0603
0603 | R1 | 10k | 0603
0603 | R1 | 10k | R 0603
0603 | R1 | 10k | RESC0603(1608)_N
0603 | C1 | 100n | CAPC1608X87
0603 | R1 | 10k | 1608
0603 | R1 | 10k | 1608 metric
0603 | R1 | 10k | 1608M
0603 | R1 | 10k | 1608 (0603)
0603 | R1 | 10k | 0603 (1608 metric)
0603 | R1 | 10k | 0603/1608
0603 | R1 | 10k | 0603[1608]
0201 | R1 | 10k | 0603 metric
0402 | R1 | 10k | R1005
0805 | R1 | 10k | R2012
1206 | R1 | 10k | RES-SMD-1206
0603 | R1 | 10k | RES-0603
0603 | R1 | 10k | SMD,0603
0603 | R1 | 10k | SMD R 0603
0603 | R1 | 10k | SM0603
0603 | R1 | 10k | Chip 0603
0603 | R1 | 10k | 0603 SMD
EIA-3216 | C1 | 10uF 16V | CASE A
EIA-3216 | C1 | 10uF 16V | SMC_A
EIA-3528 | C1 | 10uF 16V tantalum | B case
EIA-6032 | C1 | 47uF tantalum | C (6032-28)
EIA-7343 | C1 | 100uF tantalum | 7343-31
EIA-3528 | C1 | 10uF | TANTAL_B
EIA-3216 | C1 | 10uF | CAP_TANT_A_3216
EIA-3216 | C1 | 10uF | 3216-18(mm)
EIA-7343 | C1 | 100uF | CAPMP7343X43N
SOIC-8 | U1 | LM358 | SO8
SOIC-8 | U1 | LM358 | SO-8
SOIC-8 | U1 | LM358 | SO08
SOIC-8 | U1 | LM358 | SOIC8
SOIC-8 | U1 | LM358 | 8-SOIC
SOIC-8 | U1 | LM358 | SOIC-8N
SOIC-8 | U1 | LM358 | SOIC8_N
SOIC-8 | U1 | LM358 | SOIC 8
SOIC-8 | U1 | LM358 | 8-SOIC (0.154", 3.90mm Width)
SOIC-16 | U1 | MAX232 | SO16W
SOIC-16 | U1 | MAX232 | SOIC-16 wide
SOIC-20 | U1 | 74HC245 | SO20L
SOP-8 | U1 | LM358 | SOP8
SOP-8 | U1 | LM358 | SOP-8_3.9x4.9mm_P1.27mm
SOIC-8 | U1 | LM358 | SOIC-8(150mil)
SOP-16 | U1 | CH340G | SOP-16_L10.0-W3.9-P1.27-LS6.0-BL
SOT-23-5 | U1 | LP5907 | SOT-23-5_L3.0-W1.7-P0.95-LS2.8-BR
0603 | R1 | 10k | R0603_L1.6-W0.8
LQFP-48 | U1 | STM32F103 | LQFP-48_L7.0-W7.0-P0.50-LS9.0-BL
QFN-20 | U1 | CP2102 | QFN-20_L4.0-W4.0-P0.50-BL-EP2.7
TSSOP-16 | U1 | 74HC595 | 16-TSSOP
TSSOP-14 | U1 | LM324 | TSSOP14
SSOP-20 | U1 | X | SSOP20
MSOP-8 | U1 | X | 8-MSOP
MSOP-8 | U1 | X | uMAX-8
MSOP-8 | U1 | X | 8-uMAX
VSSOP-8 | U1 | X | VSSOP-8
DIP-8 | U1 | NE555 | DIL8
DIP-8 | U1 | NE555 | DIP8
DIP-8 | U1 | NE555 | DIL-08
DIP-8 | U1 | NE555 | PDIP-8
DIP-8 | U1 | NE555 | 8-DIP (0.300", 7.62mm)
DIP-14 | U1 | 74HC00 | DIP-14__300
DIP-28 | U1 | ATMEGA328 | DIP28-3
DIP-28 | U1 | ATMEGA328 | 28-PDIP
DIP-28 | U1 | ATMEGA328 | SPDIP-28
DIP-40 | U1 | Z80 | DIL40
DIP-40 | U1 | Z80 | DIP-40_W15.24mm
TQFP-44 | U1 | ATMEGA | 44-TQFP
TQFP-44 | U1 | ATMEGA | TQFP44
LQFP-100 | U1 | STM32 | LQFP100
PLCC-44 | U1 | X | PLCC44
QFN-16 | U1 | X | 16-QFN (3x3)
QFN-16 | U1 | X | QFN16
VQFN-24 | U1 | X | VQFN-24-1EP_4x4mm_P0.5mm
WSON-8 | U1 | X | WSON-8-1EP_6x5mm_P1.27mm_EP3.4x4.3mm
DFN-8 | U1 | X | DFN-8-1EP_3x3mm_P0.65mm
BGA-256 | U1 | X | BGA256
BGA-256 | U1 | X | BGA-256_17.0x17.0mm_Layout16x16_P1.0mm
WLCSP-36 | U1 | X | WLCSP-36_2.5x2.5mm
LGA-8 | U1 | BME280 | Bosch_LGA-8_2.5x2.5mm_P0.65mm
LGA-14 | U1 | LSM6DS3 | LGA-14_3x2.5mm_P0.5mm
SOT-23 | Q1 | BC847 | SOT23
SOT-23 | Q1 | BC847 | SOT-23-3
SOT-23 | Q1 | BC847 | SOT23-3
SOT-23 | Q1 | BC847 | SOT23-BEC
SOT-23 | Q1 | BSS138 | SOT-23 (TO-236)
SOT-23 | Q1 | BSS138 | TO-236-3, SC-59, SOT-23-3
SOT-23 | Q1 | BSS138 | SOT-23(TO-236)
SOT-23 | Q1 | BSS138 | SOT-23_L2.9-W1.3-P1.90-LS2.4-BR
SOT-23-5 | U1 | X | SOT23-5L
SOT-23-5 | U1 | X | SOT-23-5
SOT-23-6 | U1 | X | SOT23-6
SOT-23-6 | U1 | X | SOT-23-6L
SOT-23-6 | U1 | X | SOT26
SOT-23-5 | U1 | X | SOT25
SOT-23-5 | U1 | X | SC-74A, SOT-753
TSOT-23-6 | U1 | X | TSOT-23-6
TSOT-23-5 | U1 | X | TSOT23-5
SOT-323 | Q1 | X | SOT-323 (SC-70)
SC-70 | Q1 | X | SC70
SC-70-6 | U1 | X | SC70-6
SC-70-5 | U1 | X | SC-70-5
SOT-363 | U1 | X | SOT-363
SOT-353 | U1 | X | SOT353
SOT-223 | U1 | X | SOT-223-3_TabPin2
SOT-89 | U1 | X | SOT-89-3
SOT-89 | U1 | X | SOT89
SOT-143 | U1 | X | SOT-143
TO-92 | Q1 | X | TO92
TO-92 | Q1 | X | TO-92-3
TO-92 | Q1 | X | TO-92_Wide
TO-92 | Q1 | X | TO-226-3, TO-92-3 (TO-226AA)
TO-220 | U1 | 7805 | TO220
TO-220 | U1 | 7805 | TO-220AB
TO-220 | U1 | 7805 | TO220-3
TO-220 | U1 | 7805 | TO-220-3_Horizontal_TabDown
TO-220-5 | U1 | LM2576 | TO-220-5
TO-220-5 | U1 | LM2576 | TO220-5
TO-220F | Q1 | X | TO-220F-3_Vertical
TO-247 | Q1 | X | TO-247-3
TO-252 | Q1 | X | TO252
TO-252 | Q1 | X | TO-252-3
DPAK | Q1 | X | DPAK
TO-252 | Q1 | X | TO-252-3, DPak (2 Leads + Tab), SC-63
TO-263 | Q1 | X | TO-263-3
TO-263-5 | U1 | LM2596 | TO-263-5
TO-263-5 | U1 | LM2596 | TO-263-5_TabPin3
D2PAK | Q1 | X | D2PAK
TO-126 | Q1 | X | TO126
TO-3 | Q1 | X | TO-3
TO-18 | Q1 | X | TO18
SMA | D1 | SS14 | DO-214AC
SMA | D1 | SS14 | DO-214AC, SMA
SMA | D1 | SS14 | SMA(DO-214AC)
SMB | D1 | SS24 | DO-214AA (SMB)
SMC | D1 | X | SMC
SMB | D1 | X | SMB
SMA | D1 | X | SMA_L4.3-W2.6-LS5.2-RD
SOD-123 | D1 | X | SOD123
SOD-123 | D1 | X | SOD-123_L2.7-W1.6-LS3.7-RD
SOD-323 | D1 | X | SOD323
SOD-323 | D1 | X | SC-76, SOD-323
SOD-523 | D1 | X | SOD-523
MiniMELF | D1 | X | MINIMELF
SOD-80 | D1 | X | LL-34
SOD-80 | D1 | X | SOD80C
SOD-80 | D1 | X | DO-213AA
MELF | D1 | X | DO-213AB, MELF
DO-35 | D1 | X | DO35
DO-35 | D1 | X | DO35-7
DO-35 | D1 | X | DIODE-DO35
DO-35 | D1 | X | DO-204AH, DO-35, Axial
DO-41 | D1 | X | DO41-10
DO-41 | D1 | X | DO-204AL, DO-41, Axial
DO-15 | D1 | X | DO-15
DO-27 | D1 | X | DO27
DO-201AD | D1 | X | DO-201AD, Axial
DIN0207 | R1 | 10k | 0207/10
DIN0207 | R1 | 10k | 0207/7
DIN0204 | R1 | 10k | 0204/7
DIN0207 | R1 | 10k | R-EU_0207/10
HC-49U | Y1 | 16M | HC49/U
HC-49S | Y1 | 16M | HC49/S
HC-49S | Y1 | 16M | HC-49S
HC-49US | Y1 | 16M | HC49/US
3225 | Y1 | 16M | SMD-3225_4P
3225 | Y1 | 16M | CRYSTAL-SMD_4P-L3.2-W2.5-BL
3215 | Y1 | 32.768k | Crystal_SMD_3215-2Pin_3.2x1.5mm
5032 | Y1 | 16M | Crystal_SMD_5032-2Pin_5.0x3.2mm
2016 | Y1 | 16M | SMD2016-4P
3225 | Y1 | 16M | 3.2x2.5mm
SIP-9 | RN1 | 10k | SIL9
SIP-8 | RN1 | 10k | R_Array_SIP8
`;

// common practice, no source; land patterns by the rule of IPC-7351B
void test('names of footprints give their package in the spelling of the trade', () => {
  for (const line of NAMES.trim().split('\n')) {
    const [name = '', ref = '', value = '', footprint = ''] = line.split(' | ');
    const { part } = readPart('', { refs: [ref], fields: value === '-' ? { footprint } : { value, footprint } });
    assert.equal(part.facts.package?.value ?? '-', name, footprint);
  }
});

// common practice, no source
void test('a crystal and a square LED are named by their body in tenths of a millimetre', () => {
  const named = (ref: string, value: string, footprint: string): string | undefined =>
    readPart('', { refs: [ref], fields: { value, footprint } }).part.facts.package?.value;
  assert.equal(named('Y1', '16 MHz', '3.2x2.5mm'), '3225');
  assert.equal(named('Y1', '16 MHz', 'CRYSTAL-SMD_4P-L5.0-W3.2-BL'), '5032');
  assert.equal(named('C1', '16 pF', '3.2x2.5mm'), undefined);
});

// common practice, no source: a list may be older than the number that is bought
void test('a stated size against that of the ordering code is a doubt', () => {
  const fields = { value: '10k', footprint: 'R_0805_2012Metric', partNumber: 'RC0603FR-0710KL' };
  const { part, doubts } = readPart('', { refs: ['R1'], fields });
  assert.equal(part.facts.package?.value, '0805');
  assert.deepEqual(
    doubts.map(({ field, code }) => [field, code]),
    [['package', 'conflict']],
  );
});

// the trap of the diode outlines that are connectors too: common practice, no source
void test('SMA and SMB are outlines of diodes, and connectors elsewhere', () => {
  const read = (text: string): (string | undefined)[] => {
    const { part } = readPart(text);
    return [part.kind, part.facts.package?.value];
  };
  assert.deepEqual(read('SS14 SMA'), ['diode', 'SMA']);
  assert.deepEqual(read('SMBJ5.0A SMB'), ['tvs', 'SMB']);
  assert.deepEqual(read('SMA connector edge mount'), ['connector', undefined]);
  assert.deepEqual(read('SMB jack right angle'), ['connector', undefined]);
});
