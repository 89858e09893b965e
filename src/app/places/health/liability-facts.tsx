import type { JSX } from 'preact';
import { strictLiability } from '#core/tables/substances.ts';
import { Caution } from '../../parts/caution.tsx';
import { sourceWords } from '../../views/source-words.ts';

/** Stands with every list of products: no product is called safe. */
export function LiabilityFacts(): JSX.Element {
  return (
    <Caution
      title="You answer for what is found in you"
      words={strictLiability.map(({ words }) => words)}
      source={[...new Set(strictLiability.map(({ source }) => sourceWords(source)))].join('; ')}
    />
  );
}
