import { storageRule, type StorageClass } from '#core/tables/storage-clock.ts';

/** Where a food is kept by habit; what is not known goes into the fridge. */
export function habitPlace(storage: StorageClass | undefined): 'fridge' | 'freezer' | 'cupboard' {
  return storage === undefined ? 'fridge' : storageRule(storage).place;
}
