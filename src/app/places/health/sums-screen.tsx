import type { JSX } from 'preact';
import type { LimitCheck, SumAnswer } from '#core/health/supplements/sum-request.ts';
import { strictLiability } from '#core/tables/substances.ts';
import { Caution } from '../../parts/caution.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { Tag } from '../../parts/tag.tsx';
import { pathTo } from '../../shell/route.ts';
import { sums } from '../../views/health-view.ts';
import { LiabilityFacts } from './liability-facts.tsx';
import './sums-screen.css';

/** What a usual day adds up to, held against the US and the EU limit side by side. */
export function SumsScreen(): JSX.Element {
  const answer = sums.value;
  return (
    <Page title="Added up" detail="a usual day, as the regimens stand" back={pathTo('health', 'supplements')}>
      {!answer || answer.nutrients.length + answer.substances.length + answer.notKnown.length === 0 ? (
        <EmptyState
          title="Nothing runs yet."
          words="Describe a product by its label and say when it is taken; then it is added up here."
        />
      ) : (
        <Sums answer={answer} />
      )}
    </Page>
  );
}

function Sums({ answer }: { readonly answer: SumAnswer }): JSX.Element {
  const over = answer.nutrients.filter(isOver);
  return (
    <div class="stack">
      {over.map(({ name, unit, us, eu }) => (
        <Caution
          key={name}
          title={`${name} is over a limit`}
          words={[...us.map((limit) => ['US', limit] as const), ...eu.map((limit) => ['EU', limit] as const)]
            .filter(([, limit]) => limit.over)
            .map(
              ([body, limit]) =>
                `${body}: ${figure(limit.total)} of ${figure(limit.perDay)} ${unitWords(unit)} a day (counting ${limit.counted}).`,
            )}
        />
      ))}
      {answer.cautions.filter(isOwn).map(({ words, source }) => (
        <Caution key={words} words={words} source={source} />
      ))}
      <Section title="Vitamins and minerals" detail="tap a sum for its products and the limit's source">
        <Nutrients answer={answer} />
        <Note>
          What counts differs. "Food too": every source counts, and this journal knows only the sodium and
          potassium of food, so the true sum is higher than shown. "Added": what is added to food or swallowed
          as such. "Not food": supplements alone. "None": that body has set no limit.
        </Note>
      </Section>
      <Caffeine answer={answer} />
      <Substances answer={answer} />
      <LiabilityFacts />
    </div>
  );
}

/** What stands with every list is said once, at its end. */
const isOwn = (caution: { readonly words: string }): boolean =>
  strictLiability.every(({ words }) => words !== caution.words);

type Nutrient = SumAnswer['nutrients'][number];

const unitWords = (unit: Nutrient['unit']): string => (unit === 'ug' ? 'µg' : unit);

const isOver = ({ us, eu }: Nutrient): boolean => [...us, ...eu].some((limit) => limit.over);

function Nutrients({ answer }: { readonly answer: SumAnswer }): JSX.Element {
  return (
    <Table
      caption="A day's sum against the limits"
      captionHidden
      columns={[
        { key: 'name', label: 'Nutrient' },
        { key: 'sum', label: 'Sum', numeric: true },
        { key: 'us', label: 'US limit', numeric: true },
        { key: 'eu', label: 'EU limit', numeric: true },
      ]}
      rows={answer.nutrients.map((nutrient) => ({
        name: (
          <>
            {nutrient.name} {nutrient.duplicate && <Tag>{`in ${nutrient.parts.length}`}</Tag>}
          </>
        ),
        sum: <SumFigure nutrient={nutrient} />,
        us: limitWords(nutrient.us),
        eu: limitWords(nutrient.eu),
      }))}
    />
  );
}

function SumFigure({ nutrient }: { readonly nutrient: Nutrient }): JSX.Element {
  const { name, unit, supplements, parts, us, eu, notes, caution } = nutrient;
  return (
    <Figure
      value={figure(supplements)}
      unit={unitWords(unit)}
      size="line"
      label={name}
      labelHidden
      why={{
        title: `${name} in a day`,
        sentences: [
          'The sum over all products with a regimen, each by its label.',
          ...us.map((limit) => whyLimit('US', unit, limit)),
          ...eu.map((limit) => whyLimit('EU', unit, limit)),
          ...notes,
          ...(caution === undefined ? [] : [caution]),
        ],
        inputs: parts.map((part) => ({
          name: part.name,
          value:
            part.amount === undefined
              ? 'the label does not say'
              : `${figure(part.amount)} ${unitWords(unit)}`,
          ...(part.form === undefined ? {} : { from: part.form }),
        })),
        source: [...new Set([...us, ...eu].map(({ source }) => source))],
      }}
    />
  );
}

function whyLimit(body: string, unit: Nutrient['unit'], limit: LimitCheck): string {
  const food = limit.foodUnknown ? ' Food counts and is not known, so the true share is higher.' : '';
  const words = limit.words === undefined ? '' : ` (${limit.words})`;
  const seen = limit.evidence === 'seen' ? '' : ' The figure is from memory.';
  return `${body}: ${limit.basis} ${figure(limit.perDay)} ${unitWords(unit)} a day${words}, counting ${limit.counted}; ${Math.round(limit.percent)} % of it.${food}${seen}`;
}

/** What counts towards a limit, short enough for a phone; the reasons say it in full. */
const SCOPES: Readonly<Record<LimitCheck['counted'], string>> = {
  'all sources': 'food too',
  'added forms': 'added',
  'supplements only': 'not food',
};

function limitWords(limits: readonly LimitCheck[]): JSX.Element | string {
  if (limits.length === 0) return 'none';
  return (
    <>
      {limits.map((limit) => (
        <span key={`${limit.perDay} ${limit.counted} ${limit.words ?? ''}`} class="limit-cell">
          {figure(limit.perDay)}
          <span class="limit-scope">{SCOPES[limit.counted]}</span>
          {limit.over && <span class="limit-over">over</span>}
        </span>
      ))}
    </>
  );
}

function Caffeine({ answer: { caffeine } }: { readonly answer: SumAnswer }): JSX.Element {
  return (
    <Section title="Caffeine">
      <Facts
        items={[
          {
            name: 'A day, drinks too',
            value: `${Math.round(caffeine.perDayMg)} of ${caffeine.limitPerDayMg} mg${caffeine.drinksUnknown ? ', drinks not known' : ''}`,
          },
          {
            name: 'The largest dose',
            value: `${Math.round(caffeine.largestDoseMg)} of ${caffeine.limitPerDoseMg} mg`,
          },
        ]}
      />
      <Note>{`Source: ${caffeine.source}`}</Note>
    </Section>
  );
}

function Substances({ answer }: { readonly answer: SumAnswer }): JSX.Element | null {
  if (answer.substances.length + answer.notKnown.length === 0) return null;
  return (
    <Section title="Other substances">
      <List>
        {answer.substances.map((one) => (
          <ListRow
            key={one.substance}
            title={one.name}
            detail={[
              ...(one.duplicate ? [`in ${one.parts.length} products`] : []),
              ...(one.inSport === undefined ? [] : [`in sport: ${one.inSport}`]),
              ...one.cautions.map(({ words, source }) => `${words} [${source}]`),
            ].join(' ')}
            figure={
              <Figure
                value={one.mg === undefined ? 'not said' : figure(one.mg)}
                {...(one.mg !== undefined && { unit: 'mg' })}
                size="line"
                label={one.name}
                labelHidden
              />
            }
          />
        ))}
        {answer.notKnown.map(({ name, printed }) => (
          <ListRow
            key={`${name} ${printed}`}
            title={printed}
            detail={`in ${name}; not in the tables: shown, not summed`}
          />
        ))}
      </List>
    </Section>
  );
}

function figure(value: number): string {
  return String(Number(value.toPrecision(3)));
}
