/** "06:32" in this device's zone. */
export function clockOf(atMs: number): string {
  return new Date(atMs).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
}
