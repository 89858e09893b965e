import type { Example } from '../gallery/example.ts';
import { Button } from './button.tsx';
import { Form } from './form.tsx';
import { NumberField } from './number-field.tsx';

export const examples: readonly Example[] = [
  {
    name: 'not recorded yet',
    show: () => (
      <Form
        onSubmit={() => undefined}
        problems={[
          {
            message: 'The container is heavier than the full pan.',
            remedy: 'Weigh both again; the pan comes first.',
          },
        ]}
      >
        <NumberField label="Container" unit="g" value={840} onValue={() => undefined} />
        <Button kind="next" submits records>
          Record the batch
        </Button>
      </Form>
    ),
  },
];
