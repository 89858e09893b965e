import type { JSX } from 'preact';

const TURN = { right: 0, down: 90, left: 180, up: 270 } as const;

/** An arrow head as drawn on a workshop drawing. */
export function Arrow({ turn = 'right' }: { readonly turn?: keyof typeof TURN | undefined }): JSX.Element {
  return (
    <svg class="sign" width="12" height="12" viewBox="-6 -6 12 12" aria-hidden="true">
      <path
        d="M-3-5 3 0-3 5"
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        transform={`rotate(${TURN[turn]})`}
      />
    </svg>
  );
}

/** The sign of a caution: a triangle with a stroke and a point. */
export function CautionSign(): JSX.Element {
  return (
    <svg class="sign" width="24" height="22" viewBox="0 0 24 22" aria-hidden="true">
      <path
        d="M12 1.5 23 20.5H1Z"
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linejoin="round"
      />
      <path d="M12 8v6.2M12 16.2v2.2" stroke="currentColor" stroke-width="2.4" />
    </svg>
  );
}

/** The stroke of a pencil beside what is done. */
export function DoneSign(): JSX.Element {
  return (
    <svg class="sign" width="16" height="14" viewBox="0 0 16 14" aria-hidden="true">
      <path d="M1.5 7.5 6 12 14.5 1.5" fill="none" stroke="currentColor" stroke-width="2.2" />
    </svg>
  );
}

/** Puts a line away. */
export function CrossSign(): JSX.Element {
  return (
    <svg class="sign" width="14" height="14" viewBox="0 0 14 14" aria-hidden="true">
      <path d="M2 2 12 12M12 2 2 12" stroke="currentColor" stroke-width="2.2" />
    </svg>
  );
}
