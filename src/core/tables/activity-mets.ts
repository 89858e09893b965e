/** Gross METs of an activity: code of the Compendium, edition, value. Net cost is (MET - 1) kcal per kg and hour. */
export interface ActivityMets {
  readonly code: string;
  readonly activity: string;
  readonly mets: number;
  /** The 2011 value where it differs or the only one there is. */
  readonly mets2011?: number;
  readonly source: 'herrmann-2024';
}

/** Activities of a preparation. The 2024 edition is for ages 19 to 59; read in secondary tables. */
export const activityMets: readonly ActivityMets[] = [
  { code: '02065', activity: 'stair treadmill, general', mets: 9.3, mets2011: 9, source: 'herrmann-2024' },
  { code: '02050', activity: 'lifting, vigorous', mets: 6, mets2011: 6, source: 'herrmann-2024' },
  {
    code: '02052',
    activity: 'squats or deadlifts, slow or explosive',
    mets: 5,
    mets2011: 5,
    source: 'herrmann-2024',
  },
  {
    code: '02054',
    activity: 'lifting, several exercises of 8 to 15 reps',
    mets: 3.5,
    mets2011: 3.5,
    source: 'herrmann-2024',
  },
  { code: '02055', activity: 'lifting, circuit of reciprocal supersets', mets: 5.8, source: 'herrmann-2024' },
  { code: '02048', activity: 'elliptical, moderate', mets: 5, mets2011: 5, source: 'herrmann-2024' },
  { code: '02049', activity: 'elliptical, vigorous', mets: 9, source: 'herrmann-2024' },
  { code: '17131', activity: 'stair climbing, general', mets: 6.8, source: 'herrmann-2024' },
  { code: '17133', activity: 'stair climbing, slow', mets: 4.5, mets2011: 4, source: 'herrmann-2024' },
  { code: '17134', activity: 'stair climbing, fast', mets: 9.3, mets2011: 8.8, source: 'herrmann-2024' },
  {
    code: '17190',
    activity: 'walking level, 2.8 to 3.4 mph',
    mets: 3.8,
    mets2011: 3.5,
    source: 'herrmann-2024',
  },
  {
    code: '17200',
    activity: 'walking level, 3.5 to 3.9 mph',
    mets: 4.8,
    mets2011: 4.3,
    source: 'herrmann-2024',
  },
  {
    code: '17220',
    activity: 'walking level, 4.0 to 4.4 mph',
    mets: 5.5,
    mets2011: 5,
    source: 'herrmann-2024',
  },
  { code: '17034', activity: 'walking uphill, grade 1 to 5 %', mets: 5.3, source: 'herrmann-2024' },
  { code: '17035', activity: 'walking uphill, grade 6 to 10 %', mets: 7, source: 'herrmann-2024' },
  { code: '17036', activity: 'walking uphill, grade 11 to 20 %', mets: 8.8, source: 'herrmann-2024' },
  {
    code: '17210',
    activity: 'walking 2.9 to 3.5 mph uphill, grade 1 to 5 %',
    mets: 5.3,
    mets2011: 5.3,
    source: 'herrmann-2024',
  },
  { code: '12030', activity: 'running, 5 mph', mets: 8.5, mets2011: 8.3, source: 'herrmann-2024' },
  { code: '12050', activity: 'running, 6 mph', mets: 9.3, mets2011: 9.8, source: 'herrmann-2024' },
  { code: '12070', activity: 'running, 7 mph', mets: 11, mets2011: 11, source: 'herrmann-2024' },
  { code: '01220', activity: 'cycling, 90 to 100 W', mets: 6, source: 'herrmann-2024' },
  { code: '01224', activity: 'cycling, 101 to 125 W', mets: 6.8, source: 'herrmann-2024' },
  { code: '01232', activity: 'cycling, 151 to 199 W', mets: 10.3, source: 'herrmann-2024' },
];

/** The row of a code, or undefined where the table has none. */
export function activityByCode(code: string): ActivityMets | undefined {
  return activityMets.find((row) => row.code === code);
}
