import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Fact } from '#core/journal/ledger.ts';
import { dateWords } from '#core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { Note } from '../../parts/note.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { correct } from '../../state/open-journal.ts';
import { photo } from '../../state/photos.ts';
import './photo-pair.css';

type Photo = Fact<'photo-taken'>;

/** Where the crown and the soles are until they are said: near the picture's edges. */
const CROWN = 0.05;
const SOLES = 0.95;
/** The body fills this share of the frame. */
const FILL = 0.94;

/** Two photographs with the body at the same height. */
export function PhotoPair({
  earlier,
  later,
}: {
  readonly earlier: Photo;
  readonly later: Photo;
}): JSX.Element {
  return (
    <div class="photo-pair">
      <ScaledPhoto key={earlier.entry.id} taken={earlier} />
      <ScaledPhoto key={later.entry.id} taken={later} />
    </div>
  );
}

function ScaledPhoto({ taken }: { readonly taken: Photo }): JSX.Element {
  const address = useSignal<string | undefined>(undefined);
  const missing = useSignal(false);
  const { data } = taken;
  const { crownShare = CROWN, solesShare = SOLES } = data;
  useEffect(() => {
    let url: string | undefined;
    void photo(data.photo).then((blob) => {
      missing.value = blob === undefined;
      if (!blob) return;
      url = URL.createObjectURL(blob);
      address.value = url;
    });
    return () => {
      if (url !== undefined) URL.revokeObjectURL(url);
    };
  }, [data.photo]);
  const span = Math.max(0.1, solesShare - crownShare);
  const height = FILL / span;
  const style = { height: `${100 * height}%`, top: `${100 * ((1 - FILL) / 2 - crownShare * height)}%` };
  return (
    <figure class="photo-one">
      <div class="photo-frame">
        {missing.value && <Note>This picture is not on this device.</Note>}
        {address.value !== undefined && (
          <img
            class="photo-image"
            src={address.value}
            alt={`${data.view}, ${dateWords(taken.day)}`}
            style={style}
          />
        )}
      </div>
      <figcaption>{dateWords(taken.day)}</figcaption>
      <Align taken={taken} crown={crownShare} soles={solesShare} />
    </figure>
  );
}

interface AlignProps {
  readonly taken: Photo;
  readonly crown: number;
  readonly soles: number;
}

/** Says where the crown and the soles are, in hundredths of the picture's height. */
function Align({ taken, crown, soles }: AlignProps): JSX.Element {
  const open = useSignal(false);
  const top = useSignal(Math.round(100 * crown));
  const bottom = useSignal(Math.round(100 * soles));
  if (!open.value) {
    return (
      <Button kind="quiet" onPress={() => (open.value = true)}>
        Align
      </Button>
    );
  }
  return (
    <div class="stack">
      <StepperField
        label="Crown, from the top"
        unit="%"
        value={top.value}
        step={1}
        min={0}
        max={60}
        onValue={(n) => {
          if (n !== undefined) top.value = n;
        }}
      />
      <StepperField
        label="Soles, from the top"
        unit="%"
        value={bottom.value}
        step={1}
        min={40}
        max={100}
        onValue={(n) => {
          if (n !== undefined) bottom.value = n;
        }}
      />
      <Button
        records
        onPress={() => {
          void correct(
            taken.entry.id,
            { ...taken.data, crownShare: top.value / 100, solesShare: bottom.value / 100 },
            { says: 'Aligned' },
          );
          open.value = false;
        }}
      >
        Keep
      </Button>
    </div>
  );
}
