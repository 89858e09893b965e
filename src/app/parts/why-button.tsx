import type { ComponentChildren, JSX } from 'preact';
import { Button } from './button.tsx';
import { openWhy } from './why.ts';
import type { Why } from './why.ts';

export interface WhyButtonProps {
  readonly why: Why | (() => Why);
  /** The question: "Why 4 meals?" */
  readonly children: ComponentChildren;
}

/** Asks for the reasons of a decision that is no single number. */
export function WhyButton({ why, children }: WhyButtonProps): JSX.Element {
  return (
    <Button kind="quiet" onPress={() => openWhy(typeof why === 'function' ? why() : why)}>
      {children}
    </Button>
  );
}
