import { signal } from '@preact/signals';

/** The newer version that is kept on the device and waits to be used. */
export const waitingVersion = signal<ServiceWorker | undefined>(undefined);

/** Why this browser does not keep the app on the device; absent where it does, or has not answered yet. */
export const notKept = signal<string | undefined>(undefined);

/**
 * Keeps the app on the device and watches for newer versions. A newer one waits: it is used when the person asks
 * for it or when the app is next opened, never in the middle of a step.
 */
export async function keepOnDevice(container: ServiceWorkerContainer): Promise<void> {
  const registration = await register(container);
  if (!registration) return;
  const offer = (): void => {
    // Without a controller this is the first install: there is nothing older to replace.
    if (registration.waiting && container.controller) waitingVersion.value = registration.waiting;
  };
  offer();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', offer);
  });
}

async function register(container: ServiceWorkerContainer): Promise<ServiceWorkerRegistration | undefined> {
  try {
    return await container.register('/sw.js');
  } catch (fault) {
    // Private windows and full devices refuse; the app still runs, but only with a network, and says so.
    notKept.value = fault instanceof Error ? fault.message : String(fault);
    return undefined;
  }
}

/** Uses the waiting version now: takes over and loads the page anew. */
export function takeWaitingVersion(container: ServiceWorkerContainer): void {
  const waiting = waitingVersion.value;
  if (!waiting) return;
  container.addEventListener('controllerchange', () => window.location.reload(), { once: true });
  waiting.postMessage('take-over');
}
