import type { JSX } from 'preact';
import type { JumpCause, ScaleJump } from '#core/cycle/scale-jump.ts';
import { dateWords } from '#core/words/dates.ts';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { writeNumber } from '../../parts/write-number.ts';
import { massUnit } from '../../views/mass-units.ts';
import { sourceWords } from '../../views/source-words.ts';

const WORDS: Readonly<
  Record<JumpCause, { readonly title: string; readonly detail: string; readonly long: string }>
> = {
  tissue: {
    title: 'Tissue',
    detail: 'fat and lean',
    long: 'Fat and lean tissue follow what was eaten and spent; in a day or two they move by little.',
  },
  carbohydrate: {
    title: 'Carbohydrate',
    detail: 'glycogen and its water',
    long: 'A gram of glycogen binds about 2.7 g of water. More carbohydrate than of late raises it, less lowers it.',
  },
  salt: {
    title: 'Salt',
    detail: 'fluid that salt and carbohydrate hold',
    long: 'Fluid outside the cells follows sodium, and insulin after carbohydrate. It comes and goes in two or three days.',
  },
  'other water': {
    title: 'Other water',
    detail: 'cycle, soreness, heat, stress',
    long: 'Water that moves for reasons the journal does not hold, and that of the cycle where it is noted.',
  },
  gut: {
    title: 'Gut',
    detail: 'food on its way',
    long: 'What is in the gut weighs on the scale and is not of the body.',
  },
  scale: {
    title: 'Scale',
    detail: 'the reading itself',
    long: 'What nothing else explains: rounding, where you stood, the moment.',
  },
};

/** What the last move of the scale is believed to be made of. */
export function JumpSection({ jump }: { readonly jump: ScaleJump }): JSX.Element {
  const { unit, shown } = massUnit.value;
  return (
    <Section title="What the last move is made of" detail={jumpWords(jump, unit, shown)}>
      <List label="Parts of the move">
        {jump.parts.map(({ cause, kg }) => (
          <ListRow
            key={cause}
            title={WORDS[cause].title}
            detail={WORDS[cause].detail}
            figure={
              <Figure
                value={shown(kg)}
                unit={unit}
                decimals={2}
                signed
                size="line"
                label={WORDS[cause].title}
                labelHidden
                why={() => ({
                  title: `${WORDS[cause].title} in the last move`,
                  sentences: [
                    WORDS[cause].long,
                    `The scale moved by ${signed(shown(jump.jumpKg), 1)} ${unit} from ${dateWords(jump.from)} to ${dateWords(jump.to)}; the estimate shares it out among what can have moved, by how much each usually moves and by what was logged in between.`,
                  ],
                  formula: 'move = tissue + glycogen with water + fluid + other water + gut + scale',
                  inputs: jump.parts.map((part) => ({
                    name: WORDS[part.cause].title,
                    value: `${signed(shown(part.kg), 2)} ${unit}`,
                  })),
                  source: sourceWords('hall-2011'),
                  uncertainty: 'The shares of one morning are a best guess; only their sum is measured.',
                })}
              />
            }
          />
        ))}
      </List>
    </Section>
  );
}

/** "0.6 kg up since Tuesday 2 March, mostly salt." */
function jumpWords(jump: ScaleJump, unit: string, shown: (kg: number) => number): string {
  const since = `since ${dateWords(jump.from)}`;
  if (Math.abs(jump.jumpKg) < 0.05) return `no move ${since}`;
  const way = jump.jumpKg > 0 ? 'up' : 'down';
  const most = jump.parts.reduce((best, part) =>
    Math.sign(jump.jumpKg) * part.kg > Math.sign(jump.jumpKg) * best.kg ? part : best,
  );
  return `${writeNumber(Math.abs(shown(jump.jumpKg)), 1, false)} ${unit} ${way} ${since}, mostly ${WORDS[most.cause].title.toLowerCase()}`;
}

function signed(value: number, decimals: number): string {
  return writeNumber(value, decimals, true);
}
