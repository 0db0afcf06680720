import type { z } from 'zod';

/** What the reader of files says about a value, in words of people; sentences of the schema's own go first. */
function plainMessage(issue: z.core.$ZodRawIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.input === undefined ? 'It is missing.' : `It should be ${kindInWords(issue.expected)}.`;
    case 'invalid_value':
      return `It should be ${issue.values.map(String).join(', ')}.`;
    case 'too_big':
      return issue.origin === 'string'
        ? `It is longer than ${issue.maximum} characters.`
        : `It is above ${issue.maximum}.`;
    case 'too_small':
      return issue.origin === 'string' ? 'It is empty.' : `It is below ${issue.minimum}.`;
    case 'invalid_format':
      return `It is not written as ${issue.format === 'datetime' ? 'a date with a time' : 'a date'}.`;
    default:
      return 'This version cannot read it.';
  }
}

function kindInWords(expected: string): string {
  switch (expected) {
    case 'string':
      return 'text';
    case 'number':
      return 'a number';
    case 'int':
      return 'a whole number';
    case 'boolean':
      return 'yes or no';
    case 'array':
      return 'a list';
    default:
      return 'a record with named entries';
  }
}

export function checked<S extends z.ZodType>(schema: S, raw: unknown): z.ZodSafeParseResult<z.output<S>> {
  return schema.safeParse(raw, { error: plainMessage });
}

export function inWords(error: z.ZodError): string {
  return error.issues
    .map((issue) => (issue.path.length > 0 ? `${issue.path.join('.')}: ${issue.message}` : issue.message))
    .join(' ');
}
