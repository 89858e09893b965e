import type { Example } from '../gallery/example.ts';
import { Button } from './button.tsx';
import { WhyButton } from './why-button.tsx';

const nothing = (): void => undefined;

export const examples: readonly Example[] = [
  {
    name: 'next, plain, quiet, caution',
    show: () => (
      <div class="row">
        <Button kind="next" onPress={nothing}>
          Log this meal
        </Button>
        <Button onPress={nothing}>Change it</Button>
        <Button kind="quiet" onPress={nothing}>
          Skip
        </Button>
        <Button kind="caution" onPress={nothing}>
          Throw away
        </Button>
      </div>
    ),
  },
  {
    name: 'records, over the whole width, busy hands',
    show: () => (
      <div class="busy">
        <Button kind="next" wide records onPress={nothing}>
          Set done
        </Button>
      </div>
    ),
  },
  {
    name: 'not possible now; chosen; a link; a question',
    show: () => (
      <div class="row">
        <Button disabled>Plan again</Button>
        <Button pressed onPress={nothing}>
          Zero for each
        </Button>
        <Button href="#/kitchen">Kitchen</Button>
        <WhyButton
          why={{ title: 'Why 4 meals?', sentences: ['Four fit between now and sleep, 150 minutes apart.'] }}
        >
          Why 4 meals?
        </WhyButton>
      </div>
    ),
  },
];
