import { z } from 'zod';
import { decisionsFileSchema } from '../../src/exporting/jsonl/schema.ts';

/** The JSON Schema (draft 2020-12) of the decisions file, from the schema that its writers are typed by. */
export function decisionsSchemaText(): string {
  const schema = { title: 'Decisions of a project', ...z.toJSONSchema(decisionsFileSchema) };
  return `${JSON.stringify(schema, null, 2)}\n`;
}
