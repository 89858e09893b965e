import type { JSX } from 'preact';
import { encode } from 'uqr';
import './qr-square.css';

/** A QR code (ISO/IEC 18004), black on white by day and by night, since readers expect it so. */
export function QrSquare({ text, label }: { readonly text: string; readonly label: string }): JSX.Element {
  const { data, size } = encode(text, { ecc: 'M', border: 4 });
  const path = data
    .flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])))
    .join('');
  return (
    <svg class="qr-square" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <rect class="qr-ground" width={size} height={size} />
      <path class="qr-ink" d={path} />
    </svg>
  );
}
