import type { FactKey, FactValue } from '../model/fields.ts';

/**
 * What people in the trade type when they look for an answer that its label calls something else: abbreviations of
 * door schedules, words of the shop and of the field. Never the name of a maker or of a product.
 */
const words: { readonly [K in FactKey]?: { readonly [V in FactValue<K> & string]?: string } } = {
  doorType: {
    single: 'hinged, man door, personnel door, SGL',
    pair: 'double door, double doors, PR, French doors',
    doubleEgressPair: 'double egress, opposite swing',
    doubleActing: 'double-acting hinge, swings both ways, cafe door',
    slidingManual: 'slider, patio door, barn door, pocket door',
    slidingAutomatic: 'slider, auto slider, automatic entrance, power sliding door',
    folding: 'bifold, accordion door',
    overhead: 'roll-up, rollup, roll up door, rolling door, garage door, dock door, sectional door',
    grille: 'roll-down grille, rolling grille, mall front',
    gateSwing: 'man gate, pedestrian gate',
    gateSlide: 'vehicle gate, rolling gate',
    turnstile: 'tripod',
    turnstileSecurity: 'optical turnstile, speed lane, glass barrier',
  },
  leafMaterial: {
    hollowMetal: 'HM, steel door, metal door',
    woodMineralCore: 'WD, fire door core',
    woodSolidCore: 'SCWD, SC, WD, solid wood',
    woodHollowCore: 'HCWD, HC, WD',
    aluminiumNarrow: 'storefront, AL, ALUM, aluminum, narrow stile',
    aluminiumMedium: 'storefront, AL, ALUM, aluminum, medium stile',
    aluminiumWide: 'storefront, AL, ALUM, aluminum, wide stile, monumental',
    glassFrameless: 'all-glass entrance, tempered glass, heavy glass, GL',
    gateFramed: 'ornamental gate, tube frame gate',
    chainLink: 'fence gate, mesh',
    rollingSteel: 'roll-up, rollup, coiling',
  },
  latch: {
    bored: 'cylindrical lock, knob, lever, bored lock, tubular',
    mortise: 'mortise lock, lever',
    mortiseDeadbolt: 'mortise lock, dead bolt',
    boredPlusDeadbolt: 'knob, lever, dead bolt, cylindrical lock',
    deadboltOnly: 'dead bolt, thumbturn',
    rimExit: 'crash bar, panic bar, panic hardware, push bar, touch bar, rim device',
    verticalRods: 'crash bar, panic bar, panic hardware, push bar, SVR, CVR, vertical rod',
    rimPlusRods: 'crash bar, panic bar, panic hardware, push bar, vertical rod',
    deadlatch: 'storefront latch, paddle, aluminum door lock',
    hookbolt: 'storefront lock, hook bolt, dead bolt, aluminum door lock',
    patch: 'glass door lock, floor bolt',
    railExit: 'crash bar, panic bar, panic hardware, push bar, glass door',
    roller: 'ball catch, magnetic latch',
    gateLock: 'gate latch, gate box',
    operatorLock: 'automatic door lock, slider lock, rolling door lock',
    pushPull: 'push plate, pull handle, no lock',
  },
  existingArrangement: {
    doubleCylinder: 'double cylinder deadbolt, key both sides',
    magnetNoSensor: 'maglock, mag lock, electromagnetic lock',
    magnetAlarmOnly: 'maglock, mag lock, electromagnetic lock',
    magnetFullSet: 'maglock, mag lock, electromagnetic lock, motion sensor',
    failSafeStrike: 'door release, electric release',
    freeLever: 'knob, lockset',
    freeBar: 'crash bar, panic bar, push bar',
    cardToExit: 'card reader out, badge out, keypad out',
    electricBolt: 'drop bolt, solenoid bolt',
  },
  roomUse: {
    office: 'private office, workroom, copy room',
    suiteEntrance: 'storefront, tenant entry',
    conference: 'meeting room, assembly, training room, multipurpose room',
    dayCare: 'daycare, child care, nursery, preschool',
    serverRoom: 'MDF, IDF, IT room, telecom, TR, data closet, comm room, network',
    cashRoom: 'vault, evidence, count room, safe',
    pharmacy: 'drug storage, med room',
    storage: 'stock room, store room, warehouse',
    equipment: 'mechanical room, MECH, HVAC, pump room, penthouse',
    electricalRoom: 'ELEC, switchgear, panel room',
    elevatorMachineRoom: 'EMR',
    hazardousRoom: 'boiler room, furnace, laundry, paint',
    multiToilet: 'restroom, bathroom, washroom, men, women, locker room',
    singleToilet: 'restroom, bathroom, washroom, unisex',
    closet: 'janitor, JAN, custodian, housekeeping, broom',
    dwellingEntrance: 'apartment, hotel room, guest room, dorm',
    memoryCare: 'dementia, assisted living',
    detention: 'jail, cell, holding cell',
    stormShelter: 'tornado shelter',
    safeRoom: 'panic room, vault',
    lobby: 'foyer, vestibule, reception',
    kitchen: 'break room, pantry',
    parking: 'garage',
    site: 'yard, fence',
  },
};

/** Other words for one answer, in one string; empty where the label says all. */
export function tradeWordsFor(key: FactKey, value: string): string {
  const ofFact: { readonly [value: string]: string | undefined } | undefined = words[key];
  return (ofFact && Object.hasOwn(ofFact, value) && ofFact[value]) || '';
}
