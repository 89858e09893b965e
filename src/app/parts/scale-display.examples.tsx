import type { Example } from '../gallery/example.ts';
import { ScaleDisplay } from './scale-display.tsx';

export const examples: readonly Example[] = [
  {
    name: 'each item from zero',
    show: () => (
      <ScaleDisplay
        item="Rice, cooked"
        addG={212}
        totalG={462}
        show="item"
        step="2 of 4"
        detail="from the fridge, 640 g left"
      />
    ),
  },
  {
    name: 'one bowl, running total',
    show: () => <ScaleDisplay item="Chicken breast" addG={168} totalG={1630} show="total" step="3 of 4" />,
  },
  {
    name: 'in the bowl',
    show: () => <ScaleDisplay item="Broccoli" addG={150} totalG={150} show="item" step="1 of 4" done />,
  },
];
