import type { JSX } from 'preact';
import type { PlaceProps } from '../../shell/places.ts';
import { BatchScreen } from './batch-screen.tsx';
import { BuyScreen } from './buy-screen.tsx';
import { ContainersScreen } from './containers-screen.tsx';
import { CookScreen } from './cook-screen.tsx';
import { FoodScreen } from './food-screen.tsx';
import { FoodsScreen } from './foods-screen.tsx';
import { KitchenScreen } from './kitchen-screen.tsx';
import { LabelScreen } from './label-screen.tsx';
import { RecipeCardScreen } from './recipes/recipe-card-screen.tsx';
import { RecipeEditScreen } from './recipes/recipe-edit-screen.tsx';
import { RecipeScreen } from './recipes/recipe-screen.tsx';
import { RecipesScreen } from './recipes/recipes-screen.tsx';
import { CookPlanScreen } from './week/cook-plan-screen.tsx';
import { PackScreen } from './week/pack-screen.tsx';
import { ShoppingScreen } from './week/shopping-screen.tsx';
import { WeekScreen } from './week/week-screen.tsx';
import { WeekWishesScreen } from './week/week-wishes-screen.tsx';

/** Batches, stock, foods, containers. */
export default function KitchenPlace({ path }: PlaceProps): JSX.Element {
  const [screen, id] = path;
  switch (screen) {
    case 'cook':
      return <CookScreen />;
    case 'batch':
      return <BatchScreen id={id ?? ''} />;
    case 'buy':
      return <BuyScreen />;
    case 'food':
      return <FoodScreen id={id ?? ''} />;
    case 'foods':
      return <FoodsScreen />;
    case 'label':
      return <LabelScreen />;
    case 'recipes':
      return <RecipesScreen />;
    case 'recipe':
      return <RecipeScreen id={id ?? ''} />;
    case 'recipe-edit':
      return <RecipeEditScreen id={id ?? 'new'} />;
    case 'recipe-card':
      return <RecipeCardScreen id={id ?? ''} />;
    case 'week':
      return <WeekScreen />;
    case 'week-cook':
      return <CookPlanScreen />;
    case 'week-wishes':
      return <WeekWishesScreen />;
    case 'shopping':
      return <ShoppingScreen />;
    case 'pack':
      return <PackScreen id={id ?? ''} />;
    case 'containers':
      return <ContainersScreen />;
    default:
      return <KitchenScreen />;
  }
}
