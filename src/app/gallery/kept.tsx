import type { JSX } from 'preact';
import { useState } from 'preact/hooks';

/** Holds the value of a field in an example, as a screen would. */
export function Kept<Value>(props: {
  readonly first: Value;
  readonly children: (value: Value, keep: (value: Value) => void) => JSX.Element;
}): JSX.Element {
  const [value, setValue] = useState<Value>(() => props.first);
  return props.children(value, (next) => setValue(() => next));
}
