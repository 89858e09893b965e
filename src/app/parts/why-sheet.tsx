import type { JSX } from 'preact';
import { Sheet } from './sheet.tsx';
import './why-sheet.css';
import { closeWhy, shownWhy } from './why.ts';
import type { Why } from './why.ts';

interface WhySheetProps {
  /** How a sentence is said to this person: own units, dates in words. */
  readonly say: (sentence: string) => string;
}

/** Draws the reasons asked for by `openWhy`. Stands once, in the shell. */
export function WhySheet({ say }: WhySheetProps): JSX.Element {
  const why = shownWhy.value;
  return (
    <Sheet open={why !== undefined} title={why?.title ?? 'Why'} onClose={closeWhy} margin>
      {why !== undefined && (
        <WhyText why={{ ...why, sentences: why.sentences.map((sentence) => say(sentence)) }} />
      )}
    </Sheet>
  );
}

/** The reasons themselves: sentences, formula, inputs, how sure, source. */
export function WhyText({ why }: { readonly why: Why }): JSX.Element {
  const sources = why.source === undefined ? [] : typeof why.source === 'string' ? [why.source] : why.source;
  return (
    <>
      {why.sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {why.formula !== undefined && <p class="why-formula">{why.formula}</p>}
      {why.inputs !== undefined && why.inputs.length > 0 && (
        <dl class="why-inputs">
          {why.inputs.map((input) => (
            <div class="why-input" key={input.name}>
              <dt>
                {input.name}
                {input.from !== undefined && <span class="why-from">{input.from}</span>}
              </dt>
              <dd>{input.value}</dd>
            </div>
          ))}
        </dl>
      )}
      {why.uncertainty !== undefined && (
        <p>
          <strong>How sure: </strong>
          {why.uncertainty}
        </p>
      )}
      {sources.length > 0 && <p class="why-source">{`Source: ${sources.join('; ')}`}</p>}
    </>
  );
}
