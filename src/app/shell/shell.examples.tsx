import type { Example } from '../gallery/example.ts';
import { LightChoice } from './light-choice.tsx';

export const examples: readonly Example[] = [{ name: 'light', show: () => <LightChoice /> }];
