import { stepModel } from '../../src/intake/ifc/testing/stepModel.ts';

/** Records of the small model from its floors on; the ones before are said once. */
const firstOfCopy = 20;
const longestCopy = 100;

const isOfCopy = (record: string) => Number(/^#(\d+)=/.exec(record)?.[1] ?? 0) >= firstOfCopy;

/**
 * An IFC file of about so many bytes: the small model again and again, each copy with records, marks, rooms and GlobalIds
 * of its own, and between them points of shapes, which fill most of a real model.
 */
export function largeIfc(bytes: number, copies: number): { readonly text: string; readonly doors: number } {
  const lines = stepModel().split('\n');
  const records = lines.filter(isOfCopy);
  const isFirst = (line: string) => !isOfCopy(line);
  const begin = lines.slice(0, lines.findIndex(isOfCopy)).filter(isFirst);
  const parts = [begin.join('\n')];
  const point = (id: number) => `#${id}=IFCCARTESIANPOINT((${(id % 977) / 8},${(id % 1013) / 8},3.25));`;
  const filling = Math.floor(bytes / copies / (point(10_000).length + 1));
  let points = firstOfCopy + copies * longestCopy;
  for (let copy = 1; copy <= copies; copy += 1) {
    const moved = records.map((record) =>
      record
        .replaceAll(/#(\d+)/g, (_, id: string) => `#${Number(id) + copy * longestCopy}`)
        .replaceAll(
          /'0aBcDeFgHiJkLmNoPq(\w{4})'/g,
          (_, end: string) => `'0aBcDeFgHiJk${String(copy).padStart(6, '0')}${end}'`,
        )
        .replace(/(IFCSPACE\('[^']*',\$,')/, `$1${copy}-`)
        .replace(/(IFCDOOR\('[^']*',\$,')/, `$1${copy}-`),
    );
    const shape = Array.from({ length: filling }, () => point((points += 1)));
    parts.push(moved.join('\n'), shape.join('\n'));
  }
  const doors = copies * records.filter((record) => record.includes('=IFCDOOR(')).length;
  return { text: [...parts, 'ENDSEC;', 'END-ISO-10303-21;', ''].join('\n'), doors };
}
