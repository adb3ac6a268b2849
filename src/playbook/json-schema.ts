import * as z from 'zod/mini';
import { playbookSchema } from './schema.ts';

/** The shape of a playbook file as JSON Schema (draft 2020-12), for editors that mark slips while one types. */
export function playbookJsonSchema(): Record<string, unknown> {
  const { $schema, ...schema } = z.toJSONSchema(playbookSchema, { target: 'draft-2020-12', io: 'input' });
  return { $schema, title: 'Sliderule playbook, version 1', ...schema };
}
