import { benchApp } from './app.ts';
import { benchCourse } from './course.ts';
import { benchDay } from './day.ts';
import { benchEstimate } from './estimate.ts';
import { benchGym } from './gym.ts';
import { benchJournal } from './journal.ts';
import { benchWeek } from './week.ts';
import { benchSync } from './sync.ts';

/** Every measurement in one run, side by side; name sections to run only those: `npm run bench -- journal app`. */
const sections: Readonly<Record<string, () => void | Promise<void>>> = {
  day: benchDay,
  journal: benchJournal,
  estimate: benchEstimate,
  course: benchCourse,
  gym: benchGym,
  week: benchWeek,
  sync: benchSync,
  app: benchApp,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !Object.hasOwn(sections, name));
if (unknown.length > 0) {
  console.error(`There is no bench "${unknown.join(', ')}"; there are ${Object.keys(sections).join(', ')}.`);
  process.exitCode = 2;
} else {
  console.log(`Node ${process.version} on ${process.platform} ${process.arch}`);
  for (const [name, run] of Object.entries(sections)) {
    if (asked.length === 0 || asked.includes(name)) await run();
  }
}
