import { answerCourse } from '#core/course/answer-course.ts';
import { decide } from '#core/course/decide.ts';
import { fanOver } from '#core/course/fan.ts';
import { judge } from '#core/course/judgement.ts';
import { layCourse } from '#core/course/lay-course.ts';
import { FULL_PATHS, QUICK_PATHS } from '#core/course/open-course.ts';
import { whatIf } from '#core/course/what-if.ts';
import { ordinaryWorld } from '../test/simulation/athlete-world.ts';
import { simulateCohort } from '../test/simulation/athlete-simulator.ts';
import { brierOf, landAhead, rootMeanSquare, shareOf } from '../test/simulation/course-cohort.ts';
import { knownCourse } from '../test/simulation/known-course.ts';

const ROUNDS = 15;

/** The course: speed of its paths, what-ifs and answers. */
export async function benchCourse(): Promise<void> {
  console.log('\nCourse (16 weeks to the show, one core)');
  const setting = { show: '2027-06-21', target: { bodyFatPercent: { max: 8.4 } } } as const;
  const course = knownCourse(setting);
  const now = judge(course, {}, FULL_PATHS);
  const rows: readonly (readonly [string, number, number | undefined])[] = [
    [`fan over ${FULL_PATHS} paths`, median(() => fanOver(course, course.future.days, FULL_PATHS)), 150],
    [`judgement over ${FULL_PATHS} paths`, median(() => judge(course, {}, FULL_PATHS)), 150],
    [`what-if over ${QUICK_PATHS} paths`, median((k) => whatIf(course, { energyKcal: -10 * k })), 33],
    ['opening a course', median(() => knownCourse(setting)), undefined],
    ['verdict and corrections', median(() => decide(course, now, 3)), undefined],
    ['whole answer', median(() => answerCourse(course)), undefined],
    ['a course laid back from the show', median(() => layCourse(course, { stretches: [] })), undefined],
  ];
  for (const [what, ms, wanted] of rows) {
    const against = wanted === undefined ? '' : `   ${(ms / wanted).toFixed(2)} of the ${wanted} ms wanted`;
    console.log(`  ${what.padEnd(36)}${ms.toFixed(1).padStart(8)} ms${against}`);
  }
  benchLandings();
}

/** Landings and chances against a straight line through four weeks of weigh-ins, on the same simulated athletes. */
function benchLandings(): void {
  const cohort = simulateCohort(ordinaryWorld, 41, 24).filter(({ request }) => request.days.length > 84);
  console.log(
    `  ${cohort.length} simulated athletes           error kg (line)    ratio   chance error (line)   90 % holds`,
  );
  for (const [what, days, known] of [
    ['4 weeks, plan known', 28, true],
    ['4 weeks, habit', 28, false],
    ['8 weeks, plan known', 56, true],
    ['8 weeks, habit', 56, false],
  ] as const) {
    const landings = cohort.map((athlete) => landAhead(athlete, days, known));
    const ours = rootMeanSquare(landings.map(({ meanKg, truthKg }) => meanKg - truthKg));
    const line = rootMeanSquare(landings.map(({ lineKg, truthKg }) => lineKg - truthKg));
    const chances = `${brierOf(landings, 'course').toFixed(3)} (${brierOf(landings, 'line').toFixed(3)})`;
    const holds = shareOf(landings, ({ massInside }) => massInside).toFixed(2);
    console.log(
      `  ${what.padEnd(32)}${ours.toFixed(2).padStart(7)} (${line.toFixed(2)})${(ours / line).toFixed(2).padStart(12)}   ${chances.padStart(15)}${holds.padStart(15)}`,
    );
  }
}

function median(work: (round: number) => unknown): number {
  const times = Array.from({ length: ROUNDS }, (_, round) => {
    const before = performance.now();
    work(round);
    return performance.now() - before;
  }).sort((a, b) => a - b);
  return times[Math.floor(ROUNDS / 2)] ?? 0;
}
