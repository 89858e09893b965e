import type { ComponentChildren, JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { Field } from './field.tsx';
import type { FieldWords, Ties } from './field.tsx';

export interface SearchResult {
  readonly id: string;
  readonly title: string;
  readonly detail?: string | undefined;
  readonly figure?: ComponentChildren | undefined;
}

export interface SearchFieldProps extends FieldWords {
  readonly query: string;
  readonly onQuery: (query: string) => void;
  readonly results: readonly SearchResult[];
  readonly onChoose: (id: string) => void;
  /** Said where the query finds nothing, with what to do next. */
  readonly nothing?: string | undefined;
}

/** Search by typing; the results stand below, in reach of thumb, arrow keys and screen reader (ARIA 1.2 combobox). */
export function SearchField(props: SearchFieldProps): JSX.Element {
  const listId = useId();
  const [at, setAt] = useState(0);
  const chosen = Math.min(at, props.results.length - 1);
  const open = props.results.length > 0;
  const onKey = (event: KeyboardEvent): void => {
    const moved = moveBy(event.key, chosen, props.results.length);
    const result = props.results[chosen];
    if (moved !== undefined) setAt(moved);
    else if (event.key === 'Enter' && result) props.onChoose(result.id);
    else if (event.key === 'Escape' && props.query !== '') props.onQuery('');
    else return;
    event.preventDefault();
  };
  const input = (ties: Ties): JSX.Element => (
    <input
      {...ties}
      class="field-control"
      type="text"
      role="combobox"
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      aria-autocomplete="list"
      aria-expanded={open}
      aria-controls={open ? listId : undefined}
      aria-activedescendant={open ? `${listId}-${chosen}` : undefined}
      value={props.query}
      onInput={(event) => {
        setAt(0);
        props.onQuery(event.currentTarget.value);
      }}
      onKeyDown={onKey}
    />
  );
  return (
    <Field {...props}>
      {(ties) => (
        <>
          {input(ties)}
          <span class="unseen" role="status">
            {open ? `${props.results.length} found` : ''}
          </span>
          {open && <Results {...props} listId={listId} chosen={chosen} />}
          {!open && props.query.trim() !== '' && props.nothing !== undefined && (
            <p class="field-hint">{props.nothing}</p>
          )}
        </>
      )}
    </Field>
  );
}

function Results(
  props: SearchFieldProps & { readonly listId: string; readonly chosen: number },
): JSX.Element {
  return (
    <div class="search-results" role="listbox" id={props.listId} aria-label={`${props.label}: found`}>
      {props.results.map((result, index) => (
        <div
          class="search-result"
          role="option"
          tabIndex={-1}
          key={result.id}
          id={`${props.listId}-${index}`}
          aria-selected={index === props.chosen}
          onClick={() => props.onChoose(result.id)}
        >
          <span class="choice-words">
            {result.title}
            {result.detail !== undefined && <span class="choice-detail">{result.detail}</span>}
          </span>
          {result.figure}
        </div>
      ))}
    </div>
  );
}

/** Where the arrow keys lead, or undefined for another key. */
function moveBy(key: string, at: number, count: number): number | undefined {
  if (count === 0) return undefined;
  if (key === 'ArrowDown') return (at + 1) % count;
  if (key === 'ArrowUp') return (at + count - 1) % count;
  return undefined;
}
