/**
 * Words that tell parts of one kind apart and that no fact of their own holds (trade usage, from memory). Words of one group exclude
 * each other; in a group with `!` silence excludes them too: a header that says nothing has pins, a fuse that says nothing melts.
 * In a group with `<` what stands later may stand for what stands before, by hand. An empty word goes without saying.
 * Folded as in `words.data.ts`; the longest phrase is taken first. A new word is a new row.
 */
export const VARIANT_ROWS: readonly (readonly [group: string, word: string, phrases: string, kinds: string])[] = [
  ['mount', 'right-angle', 'right angle, right angled, rightangle, angled, 90°, 90 deg, 90deg, r/a, gewinkelt, abgewinkelt, horizontal, winkel, coude, gebogen', 'header connector jumper switch potentiometer led'],
  ['mount', '', 'vertical, straight, top entry, gerade, 180°, droit, stehend', 'header connector jumper switch potentiometer led'],
  ['gender!', 'socket', 'socket strip, socket header, pin socket, pinsocket, female header, female, socket, buchsenleiste, buchse, receptacle, 排母, ピンソケット', 'header'],
  ['gender!', '', 'male, pin header, pinheader, pin strip, stiftleiste, pin', 'header'],
  ['gender', 'socket', 'socket, receptacle, rcpt, jack, buchse, female, fassung, sockel', 'connector'],
  ['gender', 'plug', 'plug, stecker, male', 'connector'],
  ['shroud', 'box', 'box header, idc box header, shrouded header, shrouded, idc header, box, idc, wannenstecker, pfostenstecker', 'header'],
  ['stacking', 'stacking', 'stacking, stackable, long pin', 'header'],
  ['ends', 'ff', 'f/f, f f, female female, female/female, innen/innen, ii, female to female', 'standoff'],
  ['ends', 'mf', 'm/f, m f, f/m, male female, male/female, female/male, innen/aussen, aussen/innen, ia, male to female', 'standoff'],
  ['ends', 'mm', 'm/m, male male, male/male, male to male', 'standoff'],
  ['lock', 'lock', 'lock nut, locknut, locking nut, nyloc, nylock, din 985, din985, iso 10511, stoppmutter, selbstsichernd', 'nut'],
  ['lock', 'square', 'square, square nut, vierkant, vierkantmutter, din 562, din562', 'nut'], ['lock', 'flange', 'flange, flange nut, din 6923', 'nut'], ['lock', 'wing', 'wing, wing nut, flugelmutter, din 315', 'nut'], ['lock', 'thin', 'thin, jam, din 439', 'nut'],
  ['lock', 'insert', 'insert, heat set, heat set insert, press in, einpress', 'nut mechanical'],
  ['washer', 'spring', 'spring, spring washer, split, federring, din 127, din127', 'washer'], ['washer', 'toothed', 'toothed, tooth, star, facherscheibe, zahnscheibe, serrated, din 6797, din 6798', 'washer'],
  ['washer', 'large', 'large, wide, fender, penny, din 9021, iso 7093', 'washer'], ['washer', 'insulating', 'insulating, isolierend', 'washer'],
  ['class<', '4.6', '4.6', 'screw'], ['class<', '4.8', '4.8', 'screw'], ['class<', '5.6', '5.6', 'screw'], ['class<', '5.8', '5.8', 'screw'], ['class<', '6.6', '6.6', 'screw'], ['class<', '6.8', '6.8', 'screw'], ['class<', '8.8', '8.8', 'screw'], ['class<', '9.8', '9.8', 'screw'], ['class<', '10.9', '10.9', 'screw'], ['class<', '12.9', '12.9', 'screw'],
  ['taper', 'log', 'log, logarithmic, audio, audio taper, logarithmisch, logarithmique', 'potentiometer'], ['taper', 'lin', 'lin, linear, lineaire, linear taper', 'potentiometer'], ['taper', 'antilog', 'antilog, reverse log, reverse audio, rev log, anti log', 'potentiometer'],
  ['taper-letter', 'taper-a', 'a taper, taper a', 'potentiometer'], ['taper-letter', 'taper-b', 'b taper, taper b', 'potentiometer'], ['taper-letter', 'taper-c', 'c taper, taper c', 'potentiometer'],
  ['gangs!', 'dual', 'dual, stereo, dual gang, dual ganged, 2 gang, tandem, doppel', 'potentiometer'],
  ['trimmer!', 'trimmer', 'trimmer, trimpot, trimpoti, trim, preset, trimmer potentiometer, trimmer resistor, einstellpoti', 'potentiometer'],
  ['turns', 'multiturn', 'multiturn, multi turn, 25 turn, 25 turns, 10 turn, 10 turns, 15 turn, 15 turns', 'potentiometer'], ['travel!', 'slide', 'slide, slide pot, slider, fader, schiebe', 'potentiometer'],
  ['joined', 'isolated', 'isolated, separate, isoliert, getrennt, isole', 'resistor-network'], ['joined', 'bussed', 'bussed, bus, bused, common, common pin, stern, sternform', 'resistor-network'],
  ['fusible', 'fusible', 'fusible, fuse, sicherungswiderstand', 'resistor'], ['flameproof', 'flameproof', 'flameproof, flame proof, flammhemmend', 'resistor'], ['sense', 'sense', 'current sense, current sensing, kelvin, 4 terminal, four terminal', 'resistor'], ['surge', 'surge', 'anti surge, pulse proof, high voltage, hochspannung', 'resistor'],
  ['ptc!', 'ptc', 'ptc, kaltleiter', 'thermistor'],
  ['esr', 'low-esr', 'low esr, low esd, low impedance, low z, lowesr', 'capacitor'], ['lead', 'axial', 'axial', 'capacitor'], ['lead', 'radial', 'radial', 'capacitor'], ['lead', 'snap-in', 'snap in, snapin', 'capacitor'],
  ['trimmer!', 'trimmer', 'trimmer, variable, trimmkondensator, trimmer capacitor, variable capacitor', 'capacitor'],
  ['shield', 'shielded', 'shielded, geschirmt, magnetically shielded, semi shielded', 'inductor'], ['shield', 'unshielded', 'unshielded, ungeschirmt, non shielded', 'inductor'], ['mode!', 'common-mode', 'common mode, common mode choke, stromkompensiert', 'inductor'],
  ['resonator!', 'resonator', 'resonator, ceramic resonator, cer resonator, keramikresonator, resonators', 'crystal'], ['resonator!', '', 'crystal resonator, quartz resonator', 'crystal'],
  ['direction', 'bi', 'bidirectional, bi directional, bidir, bidirektional, bi', 'tvs'], ['direction', 'uni', 'unidirectional, uni directional, unidir, unidirektional, uni', 'tvs'],
  ['bridge!', 'bridge', 'bridge, bridge rectifier, brucke, bruckengleichrichter, brueckengleichrichter, pont', 'diode'], ['junction', 'schottky', 'schottky', 'diode'], ['laser!', 'laser', 'laser, laser diode, laserdiode', 'diode'],
  ['common', 'common-anode', 'common anode, ca, gemeinsame anode', 'led display'], ['common', 'common-cathode', 'common cathode, cc, gemeinsame kathode', 'led display'],
  ['white', 'warm', 'warm, warm white, warmweiss', 'led'], ['white', 'cool', 'cool, cold, cool white, cold white, kaltweiss', 'led'], ['white', 'neutral', 'neutral, neutral white, neutralweiss', 'led'],
  ['strip!', 'strip', 'strip, led strip, streifen', 'led'], ['ring!', 'ring', 'ring, led ring', 'led'], ['colours!', 'bicolour', 'bicolor, bicolour, bi color, bi colour, dual color, two color, duo', 'led'], ['blink!', 'blinking', 'blinking, flashing, blink', 'led'],
  ['addressable!', 'addressable', 'addressable, neopixel, ws2812, ws2812b, sk6812', 'led'], ['lens', 'diffused', 'diffused, diffus', 'led'], ['lens', 'clear', 'clear, water clear, klar', 'led'],
  ['poles', 'spst', 'spst, 1 form a', 'switch relay'], ['poles', 'spdt', 'spdt, changeover, wechsler, 1 form c', 'switch relay'], ['poles', 'dpdt', 'dpdt, 2 form c', 'switch relay'], ['poles', 'dpst', 'dpst', 'switch relay'], ['poles', 'sp3t', 'sp3t', 'switch'],
  ['solid!', 'solid-state', 'solid state, ssr, solid state relay, halbleiterrelais', 'relay'], ['latching!', 'latching', 'latching, bistable, bistabil', 'relay'], ['reed!', 'reed', 'reed, reed relay', 'relay'],
  ['action', 'tactile', 'tactile, tact, tactile switch, tact switch, tactile button, tact button, tactile push button, tac switch, kurzhubtaster, tastschalter, タクトスイッチ', 'switch'], ['action', 'slide', 'slide, slide switch, schiebeschalter', 'switch'], ['action', 'toggle', 'toggle, toggle switch, kippschalter', 'switch'], ['action', 'rocker', 'rocker, rocker switch, wippschalter', 'switch'],
  ['action', 'encoder', 'encoder, rotary encoder, drehgeber, drehencoder, incremental encoder, ロータリーエンコーダ', 'switch'], ['action', 'rotary', 'rotary, rotary switch, drehschalter', 'switch'], ['action', 'dip', 'dip, dip switch, dil switch, dipswitch', 'switch'], ['action', 'micro', 'micro, micro switch, microswitch, limit switch, endschalter', 'switch'], ['action', 'reed', 'reed, reed switch', 'switch'], ['action', 'key', 'key switch, keyswitch, mechanical key', 'switch'],
  ['', 'push', 'push, pushbutton, push button, drucktaster, taster, momentary', 'switch'],
  ['holder!', 'holder', 'holder, battery holder, battery case, battery box, coin cell holder, coin holder, cell holder, retainer, knopfzellenhalter, batteriehalter, batteriefach, porte pile, portabatterie, battery clip, batterijhouder, battery socket', 'battery'],
  ['cell', 'alkaline', 'alkaline, alkali', 'battery'], ['cell', 'nimh', 'nimh, ni mh', 'battery'], ['cell', 'lifepo4', 'lifepo4, lfp', 'battery'], ['cell', 'li-ion', 'li ion, liion, lithium ion', 'battery'], ['cell', 'lipo', 'lipo, li po, lithium polymer', 'battery'], ['cell', 'lead', 'lead acid, sla, agm', 'battery'], ['protected', 'protected', 'protected', 'battery'],
  ['sound', 'active', 'active, aktiv, self drive, internal drive, with oscillator', 'speaker'], ['sound', 'passive', 'passive, passiv, external drive', 'speaker'], ['sounder!', 'buzzer', 'buzzer, beeper, summer, sounder, piezo buzzer, zoemer', 'speaker'],
  ['breaking<', 'breaking-l', 'low breaking, low breaking capacity, lbc', 'fuse'], ['breaking<', 'breaking-e', 'enhanced breaking', 'fuse'], ['breaking<', 'breaking-h', 'high breaking, high breaking capacity, hbc, sand filled, ceramic', 'fuse'],
  ['thermal!', 'thermal', 'thermal, thermal fuse, thermosicherung, temperatursicherung', 'fuse'],
  ['side', 'housing', 'housing, crimp housing, gehause', 'connector'], ['side', 'contact', 'crimp contact, crimp terminal, crimp pin, crimpkontakt', 'connector'], ['side', 'header', 'header, shrouded header, pin header, stiftleiste', 'connector'],
  ['usb', 'usb-c', 'usb c, usb type c, type c, usbc', 'connector'], ['usb', 'usb-micro-b', 'usb micro b, micro usb, usb micro, micro usb b', 'connector'], ['usb', 'usb-mini-b', 'usb mini b, mini usb, usb mini', 'connector'], ['usb', 'usb-a', 'usb a, usb type a, type a', 'connector'], ['usb', 'usb-b', 'usb b, usb type b, type b', 'connector'],
  ['sort', 'screw-terminal', 'screw terminal, screw terminals, terminal block, term block, screw terminal block, schraubklemme, bornier, klemmleiste, 端子台', 'connector'], ['sort', 'bnc', 'bnc', 'connector'], ['sort', 'sma', 'sma', 'connector'], ['sort', 'dc', 'dc jack, barrel jack, dc power jack, power jack, barrel', 'connector'], ['sort', 'ic', 'ic socket, dip socket, dil socket, ic sockel, ic fassung, dip sockel', 'connector'], ['sort', 'fuse', 'fuse holder, fuseholder, fuse clip, sicherungshalter, zekeringhouder, porte fusible, portafusible', 'connector'], ['sort', 'audio', 'audio jack, phone jack, klinkenbuchse', 'connector'], ['sort', 'xh', 'xh, jst xh', 'connector header'], ['sort', 'ph', 'ph, jst ph', 'connector header'], ['sort', 'zh', 'zh, jst zh', 'connector header'], ['sort', 'sh', 'jst sh', 'connector header'], ['sort', 'd-sub', 'd sub, dsub', 'connector'], ['sort', 'ffc', 'ffc, fpc, ffc fpc, ffc/fpc', 'connector'], ['sort', 'rj45', 'rj45', 'connector'], ['sort', 'rj11', 'rj11', 'connector'], ['sort', 'banana', 'banana', 'connector'], ['sort', 'card', 'card holder, card socket, memory card', 'connector'], ['card', 'microsd', 'micro sd, microsd, micro sd card, microsd card', 'connector'], ['card', 'sd', 'sd, sd card', 'connector'], ['card', 'sim', 'sim, sim card, nano sim, micro sim', 'connector'],
  ['', 'gland', 'cable gland, gland, kabelverschraubung', 'mechanical'], ['', 'heat-shrink', 'heat shrink, heatshrink, heat shrink tube, heat shrink tubing, schrumpfschlauch', 'mechanical other wire'], ['', 'heat-sink', 'heat sink, heatsink, kuhlkorper', 'mechanical'], ['', 'foot', 'rubber foot, rubber feet, foot, feet', 'mechanical'], ['', 'tie', 'cable tie, cable ties, kabelbinder', 'mechanical'],
  ['strand', 'stranded', 'stranded, litze, flexible', 'wire'], ['strand', 'solid', 'solid, massiv, solid core', 'wire'],
  ['module!', 'breakout', 'breakout, breakout board', 'connector header switch'],
];

/** Words that only name the kind or say nothing of it; folded. */
export const FILLERS =
  'zwischen between bis und from von range the a an of for with and or in on to by as at mit und fur fuer von der die das zu pour avec et de per con con y e from type typ style standard generic part component element unit pcs pc piece pieces stk st qty x ' +
  'smd smt tht pth through hole throughhole board pcb mount mounting panel position pos pin pins way poles tall high long wide hoch lang series serie new rohs size grosse black-box ' +
  'switch switche button schalter taster connector conn connectors stecker jack resistor capacitor inductor relay relais battery batterie cell coin fuse sicherung display anzeige module modul sensor speaker lautsprecher buzzer wire cable kabel draht transformer trafo mechanical screw schraube nut mutter washer scheibe standoff spacer ic chip integrated circuit diode transistor mosfet led crystal quarz oscillator regulator potentiometer pot poti';
