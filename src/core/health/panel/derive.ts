import type { Studied } from '#core/science/studied-range.ts';
import { freeTestosteronePmolPerL, USUAL_ALBUMIN_G_PER_DL } from '../equations/free-testosterone.ts';
import { meanGlucoseMgPerDl } from '../equations/hemoglobin-a1c.ts';
import { homaIr } from '../equations/insulin-resistance.ts';
import { ldlFriedewald, ldlSampson, nonHdlCholesterol } from '../equations/ldl-cholesterol.ts';
import { fib4, FIB4_HIGH_ABOVE, FIB4_LOW_BELOW, FIB4_POOR_BELOW_AGE } from '../equations/liver-index.ts';
import { fromConventional } from './convert-lab-value.ts';
import { gather, type DerivedPanel } from './derivations.ts';
import { deriveFiltration } from './derive-filtration.ts';
import { analyteOf } from './find-analyte.ts';
import { isFasted, SHORT_FAST_HOURS } from './fasted.ts';
import type { MusclePattern } from './muscle-pattern.ts';
import type { PanelView } from './panel-view.ts';

/** Everything that can be computed from the panel, and what was held back with the reason. */
export function derive(view: PanelView, muscle: MusclePattern): DerivedPanel {
  const parts = [deriveFiltration(view), lipids(view), sugar(view), liver(view, muscle), hormones(view)];
  return {
    derived: parts.flatMap((part) => part.derived),
    withheld: parts.flatMap((part) => part.withheld),
  };
}

function lipids(view: PanelView): DerivedPanel {
  const out = gather();
  const [cholesterol, hdl, triglycerides] = ['cholesterol', 'hdl', 'triglycerides'].map((key) =>
    view.number(key),
  );
  if (cholesterol === undefined || hdl === undefined) return out;
  const table = analyteOf('cholesterol');
  const unit = view.result('cholesterol')?.read.unit === table.unitSi ? table.unitSi : table.unit;
  const inUnit = (mgPerDl: number) => fromConventional(table, mgPerDl, unit);
  const said = unit === table.unit ? '' : ', computed in mg/dL';
  out.give(
    {
      key: 'nonHdl',
      name: 'Non-HDL cholesterol',
      unit,
      formula: 'total cholesterol - HDL',
      source: 'ncep-2002',
    },
    inUnit(nonHdlCholesterol({ cholesterol, hdl })),
  );
  if (triglycerides === undefined) return out;
  const given = { cholesterol, hdl, triglycerides };
  out.studied(
    {
      key: 'ldlFriedewald',
      name: 'LDL cholesterol (Friedewald)',
      unit,
      formula: `TC - HDL - TG/5, TG below 400 mg/dL${said}`,
      source: 'friedewald-1972',
    },
    ofStudied(ldlFriedewald(given), inUnit),
  );
  out.studied(
    {
      key: 'ldlSampson',
      name: 'LDL cholesterol (Sampson)',
      unit,
      formula: `TC/0.948 - HDL/0.971 - (TG/8.56 + TG x nonHDL/2140 - TG^2/16100) - 9.44, TG up to 800 mg/dL${said}`,
      source: 'sampson-2020',
    },
    ofStudied(ldlSampson(given), inUnit),
  );
  return out;
}

function ofStudied(studied: Studied<number>, map: (value: number) => number): Studied<number> {
  return studied.studied ? { studied: true, value: map(studied.value) } : studied;
}

function sugar(view: PanelView): DerivedPanel {
  const out = gather();
  const [a1c, glucose, insulin] = [view.number('hba1c'), view.number('glucose'), view.number('insulin')];
  if (a1c !== undefined) {
    const table = analyteOf('glucose');
    const unit = view.result('hba1c')?.read.unit === '%' ? table.unit : table.unitSi;
    out.give(
      {
        key: 'meanGlucose',
        name: 'Mean glucose from hemoglobin A1c (eAG)',
        unit,
        formula: '28.7 x A1c (%) - 46.7 mg/dL',
        source: 'nathan-2008',
      },
      fromConventional(table, meanGlucoseMgPerDl(a1c), unit),
    );
  }
  if (glucose === undefined || insulin === undefined) return out;
  const name = 'Insulin resistance (HOMA-IR)';
  const fasted = isFasted(view);
  if (fasted === false) {
    const hours = view.request.drawn.fastedHours;
    out.withheld.push({
      key: 'homaIr',
      name,
      reason: `Fasted ${hours} h, less than ${SHORT_FAST_HOURS}: it needs fasting glucose and insulin.`,
    });
    return out;
  }
  const notes = ['Reads very low in an energy deficit.'];
  if (fasted === undefined) notes.unshift('Fasting was not stated; without it the number means nothing.');
  out.give(
    {
      key: 'homaIr',
      name,
      unit: '1',
      formula: 'glucose (mg/dL) x insulin (uIU/mL) / 405',
      source: 'matthews-1985',
    },
    homaIr(glucose, insulin),
    notes,
  );
  return out;
}

function liver(view: PanelView, muscle: MusclePattern): DerivedPanel {
  const out = gather();
  const [ast, alt, platelets] = [view.number('ast'), view.number('alt'), view.number('plt')];
  const age = view.request.athlete.age;
  if (!ast || !alt || !platelets) return out;
  const name = 'Liver fibrosis index (FIB-4)';
  if (muscle.blocksLiverIndex) {
    const why =
      muscle.verdict === 'muscle' ? 'a muscle pattern is present' : 'muscle may have raised AST and ALT';
    out.withheld.push({
      key: 'fib4',
      name,
      reason: `Not computed: ${why}, so the index would say nothing about the liver.`,
    });
    return out;
  }
  const notes = [`Below ${FIB4_LOW_BELOW} low, above ${FIB4_HIGH_ABOVE} high.`];
  if (age < FIB4_POOR_BELOW_AGE) notes.push(`Poor below ${FIB4_POOR_BELOW_AGE} years: do not lean on it.`);
  if (muscle.verdict === 'cannot tell') notes.push('AST or ALT may come from muscle: do not lean on it.');
  out.give(
    { key: 'fib4', name, unit: '1', formula: 'age x AST / (platelets x sqrt(ALT))', source: 'sterling-2006' },
    fib4(age, ast, alt, platelets),
    notes,
  );
  return out;
}

function hormones(view: PanelView): DerivedPanel {
  const out = gather();
  const testosterone = view.panel.usable('testosterone')?.known?.si;
  const shbg = view.number('shbg');
  if (testosterone === undefined || shbg === undefined || testosterone === 0) return out;
  const measured = view.number('albumin');
  const free = freeTestosteronePmolPerL(testosterone, shbg, measured ?? USUAL_ALBUMIN_G_PER_DL);
  const notes = [
    `That is ${free.toFixed(0)} pmol/L, ${((free / testosterone) * 0.1).toFixed(2)} % of the total.`,
  ];
  if (measured === undefined) {
    const [high, low] = [3.5, 5].map((albumin) => freeTestosteronePmolPerL(testosterone, shbg, albumin));
    notes.push(
      `Albumin was not measured: ${USUAL_ALBUMIN_G_PER_DL} g/dL taken; 5.0 to 3.5 g/dL would give ${low?.toFixed(0)} to ${high?.toFixed(0)} pmol/L.`,
    );
  }
  out.give(
    {
      key: 'freeTestosterone',
      name: 'Free testosterone (calculated)',
      unit: 'ng/dL',
      formula: `mass action of total testosterone, SHBG (1e9 L/mol) and albumin (3.6e4 L/mol)${measured === undefined ? `, albumin taken as ${USUAL_ALBUMIN_G_PER_DL} g/dL` : ''}`,
      source: 'vermeulen-1999',
    },
    free / 34.67,
    notes,
  );
  return out;
}
