import { ADULT_ENERGY } from '../science/adult-energy-parameters.ts';

/** Glycogen with the water bound to it, kg per kg (hall-2011). */
export const GLYCOGEN_WITH_WATER = 1 + ADULT_ENERGY.glycogenWaterRatio;
