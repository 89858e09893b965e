/** A muscle by its anatomical name, and the words for the part of the body it makes. */
export interface Muscle {
  readonly muscle: string;
  readonly words: string;
}

/** Names as in anatomy (source key: gray-2015, from memory); heads and parts only where training tells them apart. */
export const muscles = [
  { muscle: 'pectoralis major, clavicular part', words: 'upper chest' },
  { muscle: 'pectoralis major, sternocostal part', words: 'chest' },
  { muscle: 'deltoid, anterior part', words: 'front of the shoulder' },
  { muscle: 'deltoid, lateral part', words: 'side of the shoulder' },
  { muscle: 'deltoid, posterior part', words: 'back of the shoulder' },
  { muscle: 'supraspinatus and infraspinatus', words: 'rotators of the shoulder' },
  { muscle: 'triceps brachii', words: 'back of the upper arm' },
  { muscle: 'biceps brachii', words: 'front of the upper arm' },
  { muscle: 'brachialis', words: 'deep front of the upper arm' },
  { muscle: 'brachioradialis', words: 'thumb side of the forearm' },
  { muscle: 'forearm flexors', words: 'inner forearm and grip' },
  { muscle: 'forearm extensors', words: 'outer forearm' },
  { muscle: 'latissimus dorsi', words: 'broad of the back' },
  { muscle: 'teres major', words: 'outer back below the shoulder' },
  { muscle: 'trapezius, descending part', words: 'top of the shoulders' },
  { muscle: 'trapezius, transverse part', words: 'middle of the upper back' },
  { muscle: 'trapezius, ascending part', words: 'lower part of the upper back' },
  { muscle: 'rhomboids', words: 'between the shoulder blades' },
  { muscle: 'erector spinae', words: 'along the spine' },
  { muscle: 'rectus abdominis', words: 'front of the abdomen' },
  { muscle: 'external oblique', words: 'sides of the abdomen' },
  { muscle: 'iliopsoas', words: 'front of the hip' },
  { muscle: 'gluteus maximus', words: 'buttocks' },
  { muscle: 'gluteus medius', words: 'side of the hip' },
  { muscle: 'adductor magnus', words: 'inner thigh' },
  { muscle: 'rectus femoris', words: 'middle front of the thigh' },
  { muscle: 'vastus muscles', words: 'front of the thigh' },
  { muscle: 'biceps femoris', words: 'outer back of the thigh' },
  { muscle: 'semitendinosus and semimembranosus', words: 'inner back of the thigh' },
  { muscle: 'gastrocnemius', words: 'calf' },
  { muscle: 'soleus', words: 'deep calf' },
  { muscle: 'tibialis anterior', words: 'shin' },
] as const satisfies readonly Muscle[];

export type MuscleName = (typeof muscles)[number]['muscle'];

/** Plain words for a muscle; a name the list does not have is its own words. */
export function wordsOfMuscle(name: string): string {
  return muscles.find(({ muscle }) => muscle === name)?.words ?? name;
}

/** Muscles of the thigh, hip and calf: a session with these as prime movers is a legs day. */
export const LEG_MUSCLES: readonly MuscleName[] = [
  'gluteus maximus',
  'gluteus medius',
  'adductor magnus',
  'rectus femoris',
  'vastus muscles',
  'biceps femoris',
  'semitendinosus and semimembranosus',
];
