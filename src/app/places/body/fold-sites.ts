import type { DataOf } from '#core/journal/kinds/registry.ts';

export type FoldSite = keyof DataOf<'folds-measured'>['sites'];

/** Where each fold is lifted, and where it stands on the drawing (share of width and height of the figure). */
export interface SiteOnFigure {
  readonly site: FoldSite;
  readonly where: string;
  readonly x: number;
  readonly y: number;
  readonly view: 'front' | 'back';
}

/** Sites of Jackson and Pollock 1978, Jackson, Pollock and Ward 1980, Durnin and Womersley 1974; descriptions ours. */
export const foldSitesOnFigure: readonly SiteOnFigure[] = [
  { site: 'chest', where: 'diagonal, between armpit and nipple', x: 0.4, y: 0.27, view: 'front' },
  {
    site: 'midaxillary',
    where: 'vertical, on the side, at the height of the breastbone tip',
    x: 0.34,
    y: 0.34,
    view: 'front',
  },
  { site: 'abdomen', where: 'vertical, 2 cm beside the navel', x: 0.54, y: 0.43, view: 'front' },
  { site: 'suprailiac', where: 'diagonal, just above the hip bone', x: 0.62, y: 0.46, view: 'front' },
  {
    site: 'thigh',
    where: 'vertical, front, midway between hip crease and kneecap',
    x: 0.43,
    y: 0.62,
    view: 'front',
  },
  { site: 'biceps', where: 'vertical, front of the arm, midway', x: 0.25, y: 0.31, view: 'front' },
  { site: 'triceps', where: 'vertical, back of the arm, midway', x: 0.76, y: 0.31, view: 'back' },
  { site: 'subscapular', where: 'diagonal, just below the shoulder blade', x: 0.43, y: 0.31, view: 'back' },
  { site: 'calf', where: 'vertical, inside, at the thickest', x: 0.55, y: 0.82, view: 'back' },
];
