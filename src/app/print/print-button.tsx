import type { ComponentChildren, JSX } from 'preact';
import { Button } from '../parts/button.tsx';

/** Prints the page as it stands; a PrintSheet on it is printed alone. */
export function PrintButton({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return <Button onPress={() => window.print()}>{children}</Button>;
}
