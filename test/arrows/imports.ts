import { existsSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

const REPOSITORY = join(import.meta.dirname, '../..');

/** `import x from "y"`, `export … from "y"`, `import "y"`, `import("y")` and `typeof import("y")`. */
const IMPORT = /(?:\bfrom\s*|\bimport\s*\(?\s*)(['"])([^'"\n]+)\1/g;

/** Where #names lead, as package.json says. */
const NAMES: readonly (readonly [prefix: string, folder: string])[] = [
  ['#core/', 'src/core/'],
  ['#outside/', 'src/outside/'],
  ['#demo/', 'demo/'],
];

export interface Import {
  readonly specifier: string;
  /** The file it leads to, from the repository's root; undefined for a package. */
  readonly file?: string;
}

/** Every import of a source text. `from` is the file's path from the repository's root. */
export function importsOf(source: string, from: string): Import[] {
  const code = source.replace(/\/\*[\s\S]*?\*\/|(^|\s)\/\/.*$/gm, '$1');
  return [...code.matchAll(IMPORT)].map(([, , specifier = '']) => {
    const named = NAMES.find(([prefix]) => specifier.startsWith(prefix));
    if (named) return { specifier, file: normalize(named[1] + specifier.slice(named[0].length)) };
    if (!specifier.startsWith('.')) return { specifier };
    return { specifier, file: normalize(join(dirname(from), specifier)) };
  });
}

export function exists(file: string): boolean {
  return existsSync(join(REPOSITORY, file.replace(/\?(url|raw|worker|inline)$/, '')));
}

export { REPOSITORY };
