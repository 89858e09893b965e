// The light chosen by hand (day or night) is set before the first paint, so that no screen flashes.
// Kept under the same key as shell/light.ts.
try {
  const chosen = localStorage.getItem('stagewright-light');
  if (chosen === 'day' || chosen === 'night') document.documentElement.dataset.light = chosen;
} catch {
  // Storage may be closed to pages in private windows; the system's choice then holds.
  document.documentElement.removeAttribute('data-light');
}
