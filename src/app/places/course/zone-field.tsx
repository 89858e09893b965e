import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { cityOf, offsetInZone, zonesNamed } from '#outside/time-zones/time-zones.ts';
import { Button } from '../../parts/button.tsx';
import { Facts } from '../../parts/facts.tsx';
import { SearchField } from '../../parts/search-field.tsx';
import { now } from '../../state/clock.ts';

interface ZoneFieldProps {
  readonly zone: string | undefined;
  readonly onZone: (zone: string | undefined) => void;
}

/** Whose clocks the show goes by; none is the clocks here. */
export function ZoneField({ zone, onZone }: ZoneFieldProps): JSX.Element {
  const query = useSignal('');
  if (zone !== undefined)
    return (
      <div class="stack">
        <Facts items={[{ name: 'Clocks of', value: zoneWords(zone) }]} />
        <div class="row">
          <Button onPress={() => onZone(undefined)}>Clocks here instead</Button>
        </div>
      </div>
    );
  return (
    <SearchField
      label="Clocks of another city"
      query={query.value}
      onQuery={(text) => {
        query.value = text;
      }}
      results={zonesNamed(query.value).map((name) => ({
        id: name,
        title: cityOf(name),
        detail: `${name.split('/')[0] ?? name}, ${offsetWords(name)}`,
      }))}
      onChoose={(name) => {
        query.value = '';
        onZone(name);
      }}
      nothing="No city by that name on the list of time zones. Try the capital, or the largest city near it."
      hint="only where the show is in another time zone"
      optional
    />
  );
}

/** "Auckland, UTC+12:00" as it stands now. */
export function zoneWords(zone: string): string {
  return `${cityOf(zone)}, ${offsetWords(zone)}`;
}

function offsetWords(zone: string): string {
  const minutes = offsetInZone(zone, now.value) ?? 0;
  const size = Math.abs(minutes);
  const pad = (n: number) => String(n).padStart(2, '0');
  return `UTC${minutes < 0 ? '−' : '+'}${pad(Math.floor(size / 60))}:${pad(size % 60)}`;
}
