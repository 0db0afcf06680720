import { type Answer, and, atLeast, is, not, oneOf, or, over, under } from './answer.ts';
import type { Door } from './door.ts';

const swinging = ['single', 'pair', 'doubleEgressPair', 'doubleActing', 'balanced', 'gateSwing'] as const;
const assembly = ['A-1', 'A-2', 'A-3', 'A-4', 'A-5'] as const;
const assemblyOrSchool = [...assembly, 'E'] as const;
const highHazard = ['H-1', 'H-2', 'H-3', 'H-4', 'H-5'] as const;
const institutional = ['I-1.1', 'I-1.2', 'I-2', 'I-3', 'I-4'] as const;
const exitDevices = ['rimExit', 'verticalRods', 'rimPlusRods', 'railExit'] as const;

export function wayOut({ egressRole }: Door): Answer {
  return not(oneOf(egressRole, ['noOccupiedSpace', 'sealedOff']));
}
export function groupA({ occupancyGroup }: Door): Answer {
  return oneOf(occupancyGroup, assembly);
}
function aOrE({ occupancyGroup }: Door): Answer {
  return oneOf(occupancyGroup, assemblyOrSchool);
}
export function groupH({ occupancyGroup }: Door): Answer {
  return oneOf(occupancyGroup, highHazard);
}
export function groupI({ occupancyGroup }: Door): Answer {
  return oneOf(occupancyGroup, institutional);
}
export function fireRated({ fireRatingMin, wallRatingMin, wallKind }: Door): Answer {
  return or(
    over(fireRatingMin, 0),
    and(over(wallRatingMin, 0), not(oneOf(wallKind, ['none', 'smokePartition']))),
  );
}
export function exitDevice({ panicPresent, latch }: Door): Answer {
  return or(panicPresent, oneOf(latch, exitDevices));
}
export function wiredOrLatched({ latch, readerSides }: Door): Answer {
  return not(and(is(latch, 'pushPull'), is(readerSides, 'none')));
}

export function assemblyPanic(door: Door): Answer {
  const letOff = and(
    is(door.doorType, 'gateSwing'),
    oneOf(door.occupancyGroup, ['A-4', 'A-5']),
    door.safeDispersalArea,
    door.gateSupervised,
  );
  return and(
    wayOut(door),
    oneOf(door.doorType, swinging),
    aOrE(door),
    atLeast(door.occupantLoad, 50),
    not(letOff),
  );
}
export function highHazardPanic(door: Door): Answer {
  return and(wayOut(door), oneOf(door.doorType, swinging), groupH(door));
}
export function lifeSafetyPanic(door: Door): Answer {
  const crowd = or(aOrE(door), is(door.occupancyGroup, 'I-4'), is(door.roomUse, 'dayCare'));
  return and(
    wayOut(door),
    or(and(crowd, atLeast(door.occupantLoad, 100)), and(groupH(door), over(door.occupantLoad, 5))),
  );
}

function electricalPanic(door: Door): Answer {
  const { roomUse, equipmentAmps, equipmentVolts } = door;
  const people = not(oneOf(door.doorType, ['overhead', 'grille']));
  const largeEquipment = or(
    oneOf(roomUse, ['electricalRoom', 'equipment']),
    equipmentAmps !== null,
    equipmentVolts !== null,
  );
  const strong = or(and(atLeast(equipmentAmps, 800), door.overcurrentDevices), over(equipmentVolts, 1000));
  return or(
    and(oneOf(roomUse, ['transformerVault', 'batteryRoom', 'modularDataCenter']), people),
    and(largeEquipment, under(door.doorToWorkingSpaceFt, 25), strong, people),
  );
}

export function panicRequired(door: Door): Answer {
  return or(
    and(or(assemblyPanic(door), highHazardPanic(door), lifeSafetyPanic(door)), wiredOrLatched(door)),
    electricalPanic(door),
    and(is(door.roomUse, 'refrigerationMachinery'), over(door.roomAreaFt2, 1000)),
  );
}
