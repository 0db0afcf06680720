import type { FieldGroup, FieldInfo } from '../../src/domain/model/field.ts';
import { factKeys, fieldInfo } from '../../src/domain/model/fields.ts';

const groups: Readonly<Record<FieldGroup, string>> = {
  door: 'Door',
  frame: 'Frame',
  latch: 'Latch and exit hardware',
  pair: 'Pair',
  fire: 'Fire and smoke',
  egress: 'Egress',
  stair: 'Stair and roof',
  use: 'Room and use',
  health: 'Health care',
  wishes: 'What the owner wants',
  site: 'Site',
  building: 'Building',
};
const scopes: Readonly<Record<FieldInfo['scope'], string>> = {
  opening: 'opening',
  building: 'building',
  both: 'building, or opening where it differs',
};

function values(info: FieldInfo): string {
  switch (info.kind) {
    case 'yesNo':
      return 'yes or no';
    case 'choice':
      return Object.entries(info.options ?? {})
        .map(([key, label]) => `\`${key}\` ${label}`)
        .join(' · ');
    case 'number':
      return `number from ${info.min} to ${info.max}${info.unit ? ` ${info.unit}` : ''}`;
  }
}

/** Every fact with its key, label and values, group by group. */
export function fieldsDocument(): string {
  const parts = Object.entries(groups).map(([group, title]) => {
    const keys = factKeys.filter((key) => fieldInfo(key).group === group);
    const rows = keys.map((key) => {
      const info = fieldInfo(key);
      return `| \`${key}\` | ${info.label} | ${scopes[info.scope]} | ${values(info)} |`;
    });
    return `## ${title}\n\n| key | label | belongs to | values |\n| --- | --- | --- | --- |\n${rows.join('\n')}\n`;
  });
  return `# Facts of an opening and of the building

Written by \`npx tsx scripts/fields-doc.ts\` from src/domain/model/fields.ts; change it there. The keys are the names
in the project file and the column headings of a CSV; a CSV takes labels as well.

${parts.join('\n')}`;
}
