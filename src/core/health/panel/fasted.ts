import type { PanelView } from './panel-view.ts';

/** Least fast before a morning draw for glucose, insulin and triglycerides (common practice: 8 to 12 hours). */
export const SHORT_FAST_HOURS = 8;

/** Whether blood was drawn fasting; undefined where it is not known. */
export function isFasted(view: Pick<PanelView, 'request' | 'panel'>): boolean | undefined {
  const hours = view.request.drawn.fastedHours;
  if (hours !== undefined) return hours >= SHORT_FAST_HOURS;
  return view.panel.values.some((value) => value.known?.fastingCode) ? true : undefined;
}
