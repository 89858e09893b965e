import { signal } from '@preact/signals';

/** "system" follows the device; day and night were chosen by hand and are remembered on this device. */
export type Light = 'system' | 'day' | 'night';

const KEY = 'stagewright-light';

export const light = signal<Light>('system');

/** Reads what was chosen earlier. Where storage is closed, the system's choice holds. */
export function rememberLight(store: Pick<Storage, 'getItem'>): void {
  const kept = store.getItem(KEY);
  light.value = kept === 'day' || kept === 'night' ? kept : 'system';
}

export function chooseLight(choice: Light): void {
  light.value = choice;
  const root = document.documentElement;
  if (choice === 'system') {
    delete root.dataset['light'];
    window.localStorage.removeItem(KEY);
  } else {
    root.dataset['light'] = choice;
    window.localStorage.setItem(KEY, choice);
  }
}
