import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from './read-part.ts';

/** Kind and texts; R1> 10k stands for the value 10k of the line R1. Our own inventions; words of other languages from memory. */
const TEXTS = `
resistor | Widerstand 10k; résistance 10k; resistencia 10k; resistore 10k; weerstand 10k; resistência 10k; resistor 10k; rezystor 10k; opornik 10k; odpor 10k; motstånd 10k; Schichtwiderstand 4,7k; resistor fio 10R; Metallschichtwiderstand 0,6W; modstand 10k; vastus 10k; rezistor 10k; ellenállás 10k; Kohleschichtwiderstand; Drahtwiderstand 10R 5W
capacitor | Kondensator 100n; condensateur 100n; condensador 100n; condensatore 100n; condensator 100n; kondensator 100n; kondensátor 100n; Keramikkondensator; Folienkondensator 1u; condensateur céramique 100n; condensador cerámico; kondensator ceramiczny 100n; keramický kondenzátor 100n; kondenzátor 100n; keramikkondensator; capacitor cerâmico 100n
capacitor | Elko 100u 25V; electrolytic 100u; condensateur chimique 100µF; condensateur électrolytique 100µF 25V; condensador electrolítico 100uF; condensatore elettrolitico 100uF; elco 100uF; elektrolytische condensator; capacitor eletrolítico 100uF; kondensator elektrolityczny 100uF; elektrolytický kondenzátor 100uF; elektrolytkondensator 100uF; elektrolit 100uF
inductor | Spule 10uH; Drossel 10uH; bobine 10uH; inductance 10uH; bobina 10uH; inductor 10uH; induttanza 10uH; induttore; spoel 10uH; indutor 10uH; cewka 10uH; dławik 10uH; cívka 10uH; tlumivka 10uH; spole 10uH; Speicherdrossel 47uH; self 10uH
ferrite | Ferritperle; perle de ferrite; perla de ferrita; perlina di ferrite; ferrietkraal; koralik ferrytowy; feritová perla; ferritpärla; ferrite bead
diode | Diode; diodo rectificador; diodo; dioda prostownicza; usměrňovací dioda; diod; Gleichrichterdiode; diode de redressement; ponte raddrizzatore; Brückengleichrichter; pont de diodes; puente rectificador; Schottkydiode; bruggelijkrichter; mostek prostowniczy
zener | Zenerdiode 5V1; Z-Diode 5,1V; diode Zener 5,1V; diodo Zener 5V1; dioda Zenera 5V1; Zenerova dioda 5V1; zenerdiod 5V1; zener diode
led | Leuchtdiode rot; LED rouge; LED roja 5mm; LED rossa; LED rood; LED vermelho; dioda LED czerwona; LED červená; diodo LED; diode électroluminescente; dioda świecąca; LED rot 3mm
transistor | Transistor BC547; transistore NPN; tranzystor NPN; tranzistor NPN; transistor bipolaire; transistor bipolar; transistorer; Leistungstransistor
crystal | Quarz 16MHz; quartz 16MHz; cristal 16MHz; cuarzo 16MHz; quarzo 16MHz; kristal 16MHz; kwarc 16MHz; krystal 16 MHz; kristall 16MHz; rezonator kwarcowy 16MHz; rezonátor 16MHz; Schwingquarz; cristal de cuarzo 16 MHz
connector | Stecker; Buchse; connecteur; conector; connettore; connector; złącze; konektor; kontakt USB; Steckverbinder; gniazdo USB; zásuvka; prise jack; Klemme 2-polig; bornier 2 points; morsetto 2 poli; borne 2 polos; svorkovnice; listwa zaciskowa; kopplingsplint; aansluitklem; kroonsteen; Schraubklemme; zacisk śrubowy; toma USB
header | Stiftleiste 1x10; Buchsenleiste 1x10; barrette mâle 1x10; tira de pines 1x40; pin header; strip maschio 1x10; pinnenstrip 1x10; listwa kołkowa 1x10; kolíková lišta 1x10; stiftlist 1x10; barra de pinos 1x40; listwa goldpin 1x40; hylslist 1x10; goldpin 1x40; connecteur barrette 1x10; regleta de pines 1x40
switch | Schalter; Taster; interrupteur; bouton-poussoir; interruptor; pulsador; interruttore; pulsante; deviatore; schakelaar; drukknop; przełącznik; przycisk; spínač; tlačítko; strömbrytare; tryckknapp; botão; chave; Drehschalter; Kippschalter; microswitch; vypínač; przełącznik dźwigniowy; wyłącznik; commutateur; conmutador
relay | Relais 12V; relé 12V; relè 12V; relais 5V; przekaźnik 12V; relä 12V; rele 5V; Relais 12V bistabil
fuse | Sicherung 1A; fusible 1A; fusibile 1A; zekering 1A; fusível 1A; bezpiecznik 1A; pojistka 1A; säkring 1A; Feinsicherung T1A; sikring 1A
screw | Schraube M3x10; vis M3x10; tornillo M3x10; vite M3x10; schroef M3x10; parafuso M3x10; śruba M3x10; šroub M3x10; skruv M3x10; wkręt M3x10; skrue M3x10
nut | Mutter M3; écrou M3; tuerca M3; dado M3; moer M3; porca M3; nakrętka M3; matice M3; mutter M3; møtrik M3; Sechskantmutter M3
washer | Unterlegscheibe M3; rondelle M3; arandela M3; rondella M3; ring M3 washer; anilha M3; arruela M3; podkładka M3; podložka M3; bricka M3; sluitring M3; Federscheibe M3; onderlegring M3
standoff | Abstandsbolzen M3x10; entretoise M3x10; separador M3x10; distanziale M3x10; afstandsbus M3x10; espaçador M3x10; dystans M3x10; tuleja dystansowa M3; distanční sloupek M3x10; distans M3x10; Abstandshalter M3x10; distanzbolzen M3
wire | Draht 0,5mm²; Litze 0,14mm²; fil 0,5mm²; cable 0,5mm²; cavo 0,5mm²; draad 0,5mm²; fio 0,5mm²; przewód 0,5mm²; vodič 0,5mm²; kabel; ledning 0,5mm²; drut; drát; tråd; cable plano; Flachbandkabel; kabl
battery | Batterie CR2032; pile CR2032; pila CR2032; batteria CR2032; batterij CR2032; bateria CR2032; baterie CR2032; batteri CR2032; Akku 18650; akumulator 18650; akumulátor 18650; Knopfzelle CR2032; accu 18650; batería LiPo; ogniwo 18650; pilha AA; knappcell; knoopcel
transformer | Transformator 12V; Trafo 230V/12V; transformateur 12V; transformador 12V; trasformatore 12V; transformátor 12V; Übertrager; Netztrafo; trafo 230V; transformatorek
potentiometer | Potentiometer 10k; Poti 10k; potentiomètre 10k; potenciómetro 10k; potenziometro 10k; potmeter 10k; potenciômetro 10k; potencjometr 10k; potenciometr 10k; Trimmpoti 10k; trimmer 10k; trimpotmeter; Spindeltrimmer 10k; resistencia ajustable 10k; potentiomètre ajustable; trimr 10k; montážní potenciometr
thermistor | NTC 10k; Heißleiter 10k; thermistance CTN 10k; termistor NTC 10k; termistore; Kaltleiter
varistor | Varistor 275V; varistance 275V; varistore; warystor 275V; varistor
oscillator | Quarzoszillator 25MHz; oscillateur 25MHz; oscilador 25MHz; oscillatore; generator kwarcowy 25MHz; oscilátor 25MHz; TCXO 26MHz
speaker | Lautsprecher; Summer; haut-parleur; altavoz; altoparlante; luidspreker; zoemer; głośnik; brzęczyk; reproduktor; bzučák; högtalare; zumbador; alto-falante; buzzer; ronfleur; cicalino; summer 5V; bzučiak
ic | IC NE555; circuit intégré NE555; circuito integrado; układ scalony; integrovaný obvod; Optokoppler PC817; Operationsverstärker; microcontrôleur; mikrokontroler; mikrokontrolér; optocoupleur; transoptor; integrerad krets; wzmacniacz operacyjny; operační zesilovač; geïntegreerde schakeling; amplificador operacional; amplificatore operazionale
regulator | Spannungsregler 5V; régulateur 5V; regulador de tensión 5V; regolatore di tensione 5V; spanningsregelaar 5V; stabilizator 5V; stabilizátor napětí 5V; spänningsregulator 5V; LDO 3V3; regulador de tensão 5V; regulator napięcia; stabilizator napięcia
display | Anzeige; afficheur LCD; display LCD; wyświetlacz LCD; displej LCD; scherm LCD; pantalla LCD; LCD-Anzeige; skärm; visor LCD; pantalla OLED; siebensegmentanzeige
sensor | Sensor; capteur; sensore; czujnik; čidlo; senzor; Temperaturfühler; czujnik temperatury; snímač; givare; sonda de temperatura; fototransistor; fotorezystor; Lichtsensor
module | Modul; module Bluetooth; módulo; modulo; moduł WiFi; modul WiFi
mechanical | Gehäuse; boîtier; caja; scatola; obudowa; krabička; Kühlkörper; dissipateur; disipador; dissipatore; radiator; chladič; kylfläns; koelplaat; koellichaam; dissipador; behuizing; zwischenboden gehäuse; gałka; Drehknopf
jumper | Jumper; Steckbrücke; cavalier; puente; ponticello; zworka; propojka; bygel
testpoint | Testpunkt; point de test; punto de prueba; punto di test; testpunt; punkt pomiarowy; testovací bod; testpunkt; ponto de teste
zener | D1> 1N4733A; D1> BZX84C5V1; D1> BZV55-C3V3; D1> 1N5231B; ZD1> 5V1; D2> MMSZ5231B; D1> BZT52C12
diode | D1> 1N4148; D1> 1N5819; D1> BAT54S; D1> BAV99; D1> BAS16; D1> SS34; D1> B340A; CR1> 1N4007; D1> UF4007; D1> MBRS340; D1> BYV26; D1> AA119; D1> OA91; D1> MUR120; D1> HER108; D1> RB751; D1> DB107; D1> KBP206; D1> SB560; D1> M7; D1> GBU8K
tvs | D1> SMBJ5.0A; D1> P6KE15A; D1> SMAJ33CA; D1> PESD5V0S1BL; D1> 1.5KE400A; D1> USBLC6-2SC6; D1> ESD9B5.0ST5G; D1> SMF5.0A; D1> SP0503BAHT
transistor | Q1> 2N3904; Q1> BC547B; Q1> BC817-40; T1> BD139; Q1> MMBT3904; Q1> TIP120; Q1> S8050; Q1> 2SC1815; Q1> BCX56; V1> BC557; Q1> MPSA42; Q1> J201; Q1> BF245; Q1> PN2222A; Q1> SS8550; Q1> DTC114; T1> AC128; Q1> KSP92; Q1> BFR92
mosfet | Q1> IRF540N; Q1> BSS138; Q1> 2N7002; Q1> AO3400A; Q1> SI2302; Q1> IRLML6402; Q1> BS170; Q1> FDN340P; Q1> DMG2305; Q1> IRLZ44N; Q1> AOD4184; Q1> NTR4101; Q1> CSD17313; Q1> STP55NF06; Q1> PMV16XN; Q1> BUZ11; Q1> SQ2310; Q1> NX7002
ic | U1> LM358; U1> NE555; U1> TL072; U1> 74HC595; U1> CD4017BE; U1> ATmega328P; U1> MAX232; U1> PCF8574; U1> ULN2003A; U1> 24LC256; IC1> HEF4093; IC2> SN74LVC1G08; U1> MCP3008; U1> STM32F103C8T6; U1> PC817; U1> OP07; U1> UA741; U1> W25Q32; N1> LM324; U1> 74LS04; U1> CA3140; U1> TDA2030; U1> AD8605; U1> 4N35; U1> DRV8825; U1> MOC3021; U1> L293D; U1> PT2399
regulator | U1> LM7805; U1> 78L05; U1> AMS1117-3.3; U1> LM317T; U1> AP2112K-3.3; VR1> 7812; U1> LM2596S-5.0; U1> MCP1700-3302E; U1> TPS54331; U1> 79L12; U1> XC6206P332MR; U1> L7912CV; U1> MIC5205; U1> LD1117V33; U1> HT7333; U1> MT3608; U1> TLV1117-33; IC1> L78M05; U1> LP2985-33; U1> RT9013-33; U1> LT1763; U1> ME6211C33; U1> TPS7A4700; U1> MP1584; U1> TLV70233; U1> NCP1117
crystal | Y1> 16MHz; X1> 32.768kHz; Q1> 8 MHz; XTAL1> 12MHz; Y1> ABM8-25.000MHZ; X1> 16.000; Q2> 4,000 MHz
led | D1> LED; LED1> red; D1> WS2812B; LD1> green; DS1> LED green 3mm; D1> blue; D3> SK6812; D1> APA102
fuse | F1> 500mA; F1> 1A T; FU1> 2A; F1> MF-MSMF050; F2> PTC 500mA; F1> 0451001
thermistor | RT1> 10k; TH1> NTC 10k; NTC1> 10k; R5> NTC 10k; RT1> MF52
varistor | RV1> 275V; RV1> 14D471K; MOV1> S14K275; RV1> S10K250; VR1> 07D471K; VDR1> 275VAC
potentiometer | RV1> 10k; VR1> 50k; RV2> B10K; POT1> 100k; P1> 10k; VR2> 5k trimmer; RV1> 3296W-103
inductor | L1> 10uH; L1> 4R7; L1> 100µ; L2> 2.2u
ferrite | FB1> 600R@100MHz; FB1> BLM18AG601; L3> ferrite bead 600R; E1> ferrite bead; FB2> 1k
connector | J1> USB_C; J2> Conn_01x02; P1> DB9; CN1> JST-XH 2P; TB1> Screw_Terminal_01x02; X1> USB Micro-B; XF1> fuse holder 5x20; X2> barrel jack; CON1> RJ45
header | J1> PinHeader 1x04; JP1> pin header 2x5; J3> header 2x10 2.54mm; H1> HDR 1x6
switch | SW1> SW_Push; S1> tactile 6x6; BTN1> reset; SW2> SPDT; KEY1> tact
relay | K1> G5V-1; K1> 5V relay; RL1> SRD-05VDC; RLY1> 12V
transformer | T1> 230V/12V; T1> transformer 1:1; TR1> EE16 transformer; T2> PULSE H1102
speaker | LS1> 8R; BZ1> 5V; BZ1> buzzer; SP1> speaker 8 ohm
battery | BT1> CR2032; BAT1> 3V; B1> 9V; BT1> 18650
testpoint | TP1> GND; TP2> TestPoint; TP3> 3V3
jumper | JP1> SolderJumper; SJ1> jumper; W1> jumper; LK1> link; JP1> Jumper_2_Open
not-a-part | FID1> Fiducial; H1> MountingHole; MH1> M3; FD2> fiducial
resistor-network | RN1> 4x10k; RP1> 8x4k7; RN2> 10k
oscillator | OSC1> 25MHz; Y1> TCXO 26MHz; X2> SiT8008 25MHz; G1> 50MHz oscillator
display | DS1> LCD 16x2; DISP1> 7-segment; LCD1> 1602; U4> OLED 0.96
module | U1> ESP32-WROOM-32; U2> ESP-12F; A1> Arduino Nano; MOD1> nRF24L01+; PS1> HLK-PM01; U3> RFM95W
sensor | U1> BME280; MK1> microphone; U2> DHT22; U3> MPU6050; MIC1> electret; Q3> phototransistor; U1> DS18B20; R7> LDR; U1> TMP36; U1> LIS3DH; U2> ACS712
wire | W1> AWG 22; W2> cable; CBL1> ribbon 10
mechanical | HS1> heatsink TO-220; MP1> bracket
other | M1> motor 12V; ANT1> 2.4GHz; FL1> filter; E1> antenna; V1> ECC83 tube; B1> fan 40mm; Q1> BT136 triac; FAN1> 12V
`;

// common practice, no source
void test('words of many languages, series and reference letters say the kind', () => {
  for (const line of TEXTS.trim().split('\n')) {
    const [kind = '', texts = ''] = line.split(' | ');
    for (const text of texts.split('; ')) {
      const [, ref, value = ''] = /^([A-Z]+\d+)> ?(.*)$/.exec(text) ?? [];
      const { part } = ref === undefined ? readPart(text) : readPart('', { refs: [ref], fields: { value } });
      assert.equal(part.kind, kind, text);
    }
  }
});
