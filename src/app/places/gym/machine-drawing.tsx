import type { JSX } from 'preact';
import type { LeverMachine, PegLoad } from '#core/gym/machines/peg-loadings.ts';
import './machine-drawing.css';

const SIZE = 320;
const REACH = 112;
const PIVOT = SIZE / 2;

interface DrawingProps {
  readonly machine: LeverMachine;
  readonly pegs: readonly PegLoad[];
}

/**
 * The lever from the side, where the movement starts (solid) and ends (dashed), with its pegs at their measured places:
 * a peg with plates is solid ink. Degrees run upward from the horizontal, as the level reads them.
 */
export function MachineDrawing({ machine, pegs }: DrawingProps): JSX.Element {
  const { range, padM } = machine;
  const longest = Math.max(padM, machine.lever.radiusM, ...machine.pegs.map(({ radiusM }) => radiusM));
  const at = (radiusM: number, deg: number): readonly [number, number] => {
    const angle = (deg * Math.PI) / 180;
    const reach = (REACH * radiusM) / longest;
    return [PIVOT + reach * Math.cos(angle), PIVOT - reach * Math.sin(angle)];
  };
  const loadedOn = (name: string): boolean => pegs.some(({ peg, kg }) => peg === name && kg > 0);
  return (
    <svg
      class="lever"
      viewBox={`0 0 ${SIZE} ${SIZE}`}
      role="img"
      aria-label={`The lever from the side, from ${range.fromDeg}° to ${range.toDeg}°, with its pegs`}
    >
      <path class="lever-level" d={`M${PIVOT - REACH} ${PIVOT}H${SIZE - 8}`} />
      <path class="lever-arc" d={arcOf(range, (deg) => at(padM, deg))} />
      {(['to', 'from'] as const).map((end) => {
        const turned = end === 'from' ? range.fromDeg : range.toDeg;
        return (
          <g key={end} class={end === 'from' ? 'lever-now' : 'lever-then'}>
            <Line from={[PIVOT, PIVOT]} to={at(padM, turned)} />
            {machine.pegs.map(({ name, radiusM, angleDeg }) => {
              const place = at(radiusM, turned + angleDeg);
              return (
                <g key={name}>
                  <Line from={[PIVOT, PIVOT]} to={place} />
                  <circle
                    class={loadedOn(name) ? 'lever-peg lever-loaded' : 'lever-peg'}
                    cx={place[0]}
                    cy={place[1]}
                    r="9"
                  />
                  {end === 'from' && (
                    <text class="lever-name" x={place[0]} y={place[1] + 24} text-anchor="middle">
                      {name}
                    </text>
                  )}
                </g>
              );
            })}
          </g>
        );
      })}
      <circle class="lever-pivot" cx={PIVOT} cy={PIVOT} r="6" />
    </svg>
  );
}

function Line({
  from,
  to,
}: {
  readonly from: readonly number[];
  readonly to: readonly number[];
}): JSX.Element {
  return <path class="lever-arm" d={`M${from.join(' ')}L${to.map((value) => value.toFixed(1)).join(' ')}`} />;
}

/** The way of the pad, in steps of a few degrees. */
function arcOf(
  { fromDeg, toDeg }: LeverMachine['range'],
  at: (deg: number) => readonly [number, number],
): string {
  const steps = Math.max(2, Math.ceil((toDeg - fromDeg) / 4));
  const points = Array.from({ length: steps + 1 }, (_, i) => at(fromDeg + ((toDeg - fromDeg) * i) / steps));
  return `M${points.map((point) => point.map((value) => value.toFixed(1)).join(' ')).join('L')}`;
}
