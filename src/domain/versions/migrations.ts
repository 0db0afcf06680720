/**
 * Numbered, named steps from one file format to the next: plain object in, plain object out. A step never
 * imports today's types, because it must still work when those have changed.
 */
export interface Migration {
  readonly to: number;
  readonly name: string;
  readonly up: (project: unknown) => unknown;
}

type Raw = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Raw =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/**
 * Spaces say what they are used for, how large they are and how long the way is before people have a choice; the
 * project remembers the number of each hardware set. All of it is not known yet. What is damaged passes through as
 * it is, to be set aside where everything else is.
 */
function spacesGetUseAndArea(project: unknown): unknown {
  if (!isObject(project)) return project;
  const { spaces } = project;
  const asked = { use: null, areaFt2: null, commonPathFt: null };
  return {
    setNumbers: {},
    ...project,
    ...(isObject(spaces)
      ? {
          spaces: Object.fromEntries(
            Object.entries(spaces).map(([id, space]) => [
              id,
              isObject(space) ? { ...asked, ...space } : space,
            ]),
          ),
        }
      : {}),
  };
}

export const migrations: readonly Migration[] = [
  { to: 2, name: 'SpacesGetUseAndArea', up: spacesGetUseAndArea },
];

/** Format 1 is the first; each migration raises it by one. */
export const newestFormat = 1 + migrations.length;
