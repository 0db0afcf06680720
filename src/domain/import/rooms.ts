import type { FactValue } from '../model/fields.ts';
import type { Space } from '../model/project.ts';

type RoomUse = FactValue<'roomUse'>;

/**
 * What a room name may be taken to mean. Only names that say one thing; a use that some rule treats more
 * gently than an unknown one is marked, and is then taken for single leaves only, where that rule cannot speak.
 */
const uses: readonly (readonly [RegExp, RoomUse, 'gentle'?])[] = [
  [/^corr(idor|\.)?$/, 'corridor'],
  [/^(w|m|women|men|ladies|gents|women's|men's)\b.*\btoilets?$/, 'multiToilet'],
  [/^(jan|janitor|janitor's|custodian)\.?( cl\.?| closet)?$/, 'closet'],
  [/^elev\w*\.? (mach|machine|equip|equipment|control)\w*\.?( room| rm\.?)?$/, 'elevatorMachineRoom'],
  [/^(main )?elec(\.|trical)?( room| rm\.?| cl\.?| closet)?$/, 'electricalRoom', 'gentle'],
  [/^(main |central )?mech(\.|anical)?( room| rm\.?| cl\.?| closet)?$/, 'equipment', 'gentle'],
  [/^pharm(\.|acy)?( disp\.?)?$/, 'pharmacy'],
  [/^(entry |entrance )?vest(\.|ibule)?$/, 'lobby'],
  [/^(main |entrance )?lobby$/, 'lobby'],
  [/^(tele)?comm?\.?( room| rm\.?)$|^telecom( room| rm\.?)?$|^(idf|mdf|server room)$/, 'serverRoom'],
  [/^conf(\.|erence)?( room| rm\.?)?$/, 'conference'],
  [/^class ?room( \w+)?$/, 'classroom'],
  [/^([\w.]+ )?lab(\.|oratory)?$/, 'laboratory'],
  [/^(haz(\.|ardous)?|flamm?able) (stor(\.|age)?|sto\.)$/, 'hazardousRoom'],
  [/^([\w.&]+ ){0,3}(stor(\.|age)?|sto\.)$/, 'storage', 'gentle'],
  [/^([\w.]+ ){0,3}office$/, 'office', 'gentle'],
  [/^kitchen$/, 'kitchen'],
];

export function roomUseOf(name: string, singleLeaf: boolean): RoomUse | undefined {
  const plain = name.trim().toLowerCase().replace(/\s+/g, ' ');
  // A bar joins two uses, and nothing says which of them the rules should hear.
  if (plain.includes('/')) return undefined;
  for (const [pattern, use, gentle] of uses) {
    if (pattern.test(plain)) return gentle && !singleLeaf ? undefined : use;
  }
  return undefined;
}

export function spaceKindOf(name: string): Space['kind'] {
  const plain = name.trim().toLowerCase();
  if (/\b(corr(idor)?|passage|hallway)\b/.test(plain)) return 'corridor';
  if (/\bstair(s|way|case|well)?\b/.test(plain)) return 'stair';
  if (/^(exterior|outside|outdoors?)$/.test(plain)) return 'outside';
  if (/\b(lobby|vest|vestibule)\b/.test(plain)) return 'lobby';
  if (/^elevator\b/.test(plain)) return 'elevator';
  if (/^roof\b/.test(plain)) return 'roof';
  return 'room';
}

/** Spaces people pass through; of two, the card is shown there and not in the room. */
export function isWay(kind: Space['kind']): boolean {
  return kind !== 'room';
}
