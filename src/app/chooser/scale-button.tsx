import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Problem } from '#core/problems/problem.ts';
import { connectScale, hasBluetooth, type ConnectedScale } from '#outside/scale-bluetooth/connect-scale.ts';
import type { ScaleReading } from '#outside/scale-bluetooth/scale-reading.ts';
import { Button } from '../parts/button.tsx';
import { Caution } from '../parts/caution.tsx';
import { Note } from '../parts/note.tsx';

export interface ScaleButtonProps {
  /** Called with every measurement while the scale is connected; keeping it is the person's step. */
  readonly onReading: (reading: ScaleReading) => void;
}

/** Connects a Bluetooth scale, where the browser can; shows nothing where it cannot. */
export function ScaleButton({ onReading }: ScaleButtonProps): JSX.Element | null {
  const scale = useSignal<ConnectedScale | undefined>(undefined);
  const problem = useSignal<Problem | undefined>(undefined);
  const heard = useRef(onReading);
  heard.current = onReading;
  useEffect(() => () => scale.peek()?.disconnect(), []);
  if (!hasBluetooth(navigator)) return null;
  const connect = async (): Promise<void> => {
    const connected = await connectScale(navigator, {
      onReading: (reading) => {
        problem.value = reading.ok ? undefined : reading.problem;
        if (reading.ok) heard.current(reading.value);
      },
      onGone: () => {
        scale.value = undefined;
      },
    });
    problem.value = connected.ok ? undefined : connected.problem;
    scale.value = connected.ok ? connected.value : undefined;
  };
  return (
    <div class="stack">
      <div role="status">
        {scale.value && <Note>{`Connected: ${scale.value.name}. Its readings fill the field.`}</Note>}
        {problem.value && <Caution title={problem.value.message} words={problem.value.remedy} />}
      </div>
      {scale.value ? (
        <Button onPress={() => scale.value?.disconnect()}>Let the scale go</Button>
      ) : (
        <Button onPress={() => void connect()}>Read a Bluetooth scale</Button>
      )}
    </div>
  );
}
