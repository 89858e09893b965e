import { asObject, objectsIn, textOf, type JsonObject } from './json-access.ts';

/** A resource with its place in the file. */
export interface PlacedResource {
  readonly path: string;
  readonly type: string;
  readonly resource: JsonObject;
}

export interface FhirResources {
  readonly all: readonly PlacedResource[];
  /** What a reference points at, seen from the resource that holds it. */
  resolve(reference: unknown, from: PlacedResource): PlacedResource | undefined;
}

/** Every resource of a file: of a Bundle, contained in another, or the file itself. */
export function resourcesOf(root: JsonObject): FhirResources {
  const all: PlacedResource[] = [];
  const byReference = new Map<string, PlacedResource>();
  const place = (resource: JsonObject, path: string, fullUrl?: string): PlacedResource | undefined => {
    const type = textOf(resource['resourceType']);
    if (type === undefined) return undefined;
    const placed = { path, type, resource };
    all.push(placed);
    const id = textOf(resource['id']);
    if (id !== undefined) byReference.set(`${type}/${id}`, placed);
    if (fullUrl !== undefined) byReference.set(fullUrl, placed);
    return placed;
  };
  const placeWithContained = (resource: JsonObject, path: string, fullUrl?: string) => {
    place(resource, path, fullUrl);
    for (const [index, inner] of objectsIn(resource['contained']).entries()) {
      const placed = place(inner, `${path}.contained.${index}`);
      const id = textOf(inner['id']);
      if (placed && id !== undefined) byReference.set(`${path}#${id}`, placed);
    }
  };
  if (root['resourceType'] === 'Bundle') {
    for (const [index, entry] of objectsIn(root['entry']).entries()) {
      const resource = asObject(entry['resource']);
      if (resource) placeWithContained(resource, `entry.${index}.resource`, textOf(entry['fullUrl']));
    }
  } else placeWithContained(root, 'file');
  return {
    all,
    resolve(reference, from) {
      const text = textOf(asObject(reference)?.['reference']);
      if (text === undefined) return undefined;
      if (text.startsWith('#')) return byReference.get(`${from.path}${text}`);
      return byReference.get(text) ?? byReference.get(text.split('/').slice(-2).join('/'));
    },
  };
}
