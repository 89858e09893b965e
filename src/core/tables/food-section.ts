/** Rows of the food table that share a group and an aisle of the shop; columns in table-food.ts. */
export interface FoodSection {
  readonly group: string;
  readonly aisle: string;
  readonly rows: string;
}
