import type { ComponentChildren, JSX } from 'preact';
import './facts.css';

export interface Fact {
  readonly name: string;
  readonly value: ComponentChildren;
}

/** Names and values, line by line, as on a data plate. */
export function Facts({ items }: { readonly items: readonly Fact[] }): JSX.Element {
  return (
    <dl class="facts">
      {items.map((item) => (
        <div class="fact" key={item.name}>
          <dt>{item.name}</dt>
          <dd>{item.value}</dd>
        </div>
      ))}
    </dl>
  );
}
