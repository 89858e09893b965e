import type { JSX } from 'preact';

/** One way a part is used. The same list drives the gallery, the unit tests and the accessibility tests. */
export interface Example {
  /** What is shown, in words: "a number that is not known". */
  readonly name: string;
  readonly show: () => JSX.Element;
}
