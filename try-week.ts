import loadHighs from 'highs';
import { demoJournal } from '#demo/journal.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { kitchenNow } from '#core/cycle/kitchen-now.ts';
import { weekAsk } from '#core/cycle/week-ask.ts';
import { solveWeek } from '#outside/week-solver/solve-week.ts';
import { storyMs } from './demo/scribe.ts';
import { story, utc } from './demo/story.ts';
const ledger = createLedger(demoJournal(1));
const k = kitchenNow(ledger, storyMs(story.today, '12:10', utc));
const ask = weekAsk(ledger, k, story.today);
if (!ask.ok) throw new Error(ask.problem.message);
console.log(ask.value.dishes, ask.value.ready, ask.value.foods.map(f=>f.name+' '+f.minG+'-'+f.maxG+' '+(f.unitG??'')), ask.value.days);
const highs = await loadHighs();
for (const s of [1,2,6]) { const t=performance.now(); const p = solveWeek(highs, ask.value, {seconds:s, gap:0.01}); console.log(s, (performance.now()-t).toFixed(0), p.ok ? [p.value.cost.toFixed(1), p.value.bound.toFixed(1), p.value.gap.toFixed(3)] : p.problem.message);
 if (s===6 && p.ok) { console.log(p.value.why); for (const d of p.value.days) console.log(d.date, JSON.stringify(d.target), JSON.stringify(Object.values(d.totals).map(Math.round)), d.dishes.map(x=>x.portions+' '+(x.from==='pan'?x.recipe+'@'+x.cookedOn.slice(8)+(x.frozen?'*':''):x.batch)).join(', '), '|', d.foods.map(f=>f.grams+' '+(k.catalogue.food(f.food)?.name??'')).join(', ')); console.log(p.value.pans);} }
