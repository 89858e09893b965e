import type { JSX } from 'preact';
import type { ProductNow, RegimenNow } from '#core/cycle/supplements-now.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { pathTo } from '../../shell/route.ts';
import { unitsWords } from '../../views/dose-words.ts';
import { cadenceWords, tieWords } from './regimen-words.ts';

/** Own products, each with when it is taken and how long it lasts. */
export function ProductRows({ products }: { readonly products: readonly ProductNow[] }): JSX.Element {
  return (
    <List label="Own products">
      {products.map(({ product, stock, regimens }) => (
        <ListRow
          key={product.supplement}
          title={product.name}
          detail={[
            regimens.length === 0
              ? 'no regimen'
              : regimens.map((regimen) => regimenWords(regimen, product.unit)).join('; '),
            ...(stock?.runsOutOn === undefined ? [] : [`lasts to ${dayAndMonth(stock.runsOutOn)}`]),
          ].join('; ')}
          figure={
            <Figure
              value={stock?.left}
              unit={shortUnit(product.unit)}
              decimals={0}
              size="line"
              label="Left"
              labelHidden
            />
          }
          href={pathTo('health', 'product', product.supplement)}
        />
      ))}
    </List>
  );
}

/** "2 capsules with the first meal, every day; paused". */
export function regimenWords({ regimen, paused, refusal }: RegimenNow, unit: string): string {
  const state = refusal ? ', never planned' : paused ? ', paused now' : '';
  return `${unitsWords(regimen.units, unit)} ${tieWords(regimen.tie)}, ${cadenceWords(regimen.cadence)}${state}`;
}

function shortUnit(unit: string): string {
  return unit === 'gram' ? 'g' : unit === 'millilitre' ? 'mL' : `${unit}s`;
}
