import { go, pathTo } from '../../../shell/route.ts';
import { draft } from '../../../state/drafts.ts';
import { cookDraft, emptyCook } from '../cook-draft.ts';
import { COOK_DRAFT } from '../cook-screen.tsx';

/** What a pan is to be cooked from: a recipe, or a pan of the week. */
export interface PanSource {
  readonly recipe: string;
  readonly name: string;
  readonly portions: number;
  readonly ingredients: readonly {
    readonly food: string;
    readonly rawG: number;
    readonly form?: string | undefined;
  }[];
}

/** The raw weights into the pan that is being typed, one portion a slice. */
export function intoThePan(recipe: PanSource): void {
  draft(COOK_DRAFT, cookDraft, emptyCook).value = {
    ...emptyCook,
    name: recipe.name,
    recipe: recipe.recipe,
    ingredients: recipe.ingredients.map(({ food, rawG, form }) => ({
      food,
      amount: rawG,
      unit: 'g' as const,
      ...(form !== undefined && { form }),
    })),
    count: recipe.portions,
  };
  go(pathTo('kitchen', 'cook'));
}
