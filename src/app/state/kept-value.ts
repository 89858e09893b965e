import { safeParse, type GenericSchema, type InferOutput } from 'valibot';
import { localMemory } from './local-memory.ts';

/** What lies under a key; undefined where nothing does, or what an older version left and no longer fits. */
export function keptValue<Schema extends GenericSchema>(
  key: string,
  schema: Schema,
): InferOutput<Schema> | undefined {
  try {
    const parsed = safeParse(schema, JSON.parse(localMemory.get(key) ?? 'null'));
    return parsed.success ? parsed.output : undefined;
  } catch {
    // No JSON: as if nothing lay there.
    return undefined;
  }
}
