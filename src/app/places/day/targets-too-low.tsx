import type { JSX } from 'preact';
import { Caution } from '../../parts/caution.tsx';
import { athlete } from '../../views/athlete-view.ts';
import { knownBody } from '../../views/health-view.ts';
import { say } from '../../views/say.ts';
import { sourceWords } from '../../views/source-words.ts';
import { targetCautions, type EnteredTargets } from './target-cautions.ts';

export interface TargetsTooLowProps {
  readonly targets: EnteredTargets;
  /** The gravest alone: where the day itself has to stay readable. */
  readonly brief?: boolean;
}

/** What targets entered by hand run against, each with its source: they are kept as entered, and it is said. */
export function TargetsTooLow({ targets, brief = false }: TargetsTooLowProps): JSX.Element | null {
  const who = athlete.value;
  if (!who) return null;
  const last = knownBody.value?.answer.days.at(-1);
  const body = last && { massKg: last.massKg.mean, fatKg: last.fatKg.mean };
  const cautions = targetCautions(targets, who.sex, body).slice(0, brief ? 1 : undefined);
  if (cautions.length === 0) return null;
  return (
    <Caution
      title="These targets are lower than this tool would plan"
      words={cautions.map(({ words }) => say(words))}
      source={[...new Set(cautions.map(({ source }) => sourceWords(source)))].join(' ')}
    />
  );
}
