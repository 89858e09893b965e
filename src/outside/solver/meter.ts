/** The clock is looked at once in so many questions. */
const QUESTIONS_A_LOOK = 16;

/** Counts work against a limit, and watches the emergency brake. */
export class Meter {
  readonly #mostWork: number;
  readonly #timeLeftMs: () => number;
  readonly #parts: (() => number)[] = [];
  #questions = 0;
  #ended: 'searched' | 'steps' | 'clock' = 'searched';

  constructor(mostWork: number, timeLeftMs: () => number) {
    this.#mostWork = mostWork;
    this.#timeLeftMs = timeLeftMs;
  }

  /** Why the work ended; "searched" while nothing stopped it. */
  get ended(): 'searched' | 'steps' | 'clock' {
    return this.#ended;
  }

  /** A part whose work counts, in multiply-adds. */
  count(part: { readonly work: number }): void {
    this.#parts.push(() => part.work);
  }

  /** May the work go on? Once no, always no. */
  more(): boolean {
    if (this.#ended !== 'searched') return false;
    this.#questions += 1;
    if (this.#questions % QUESTIONS_A_LOOK !== 1) return true;
    if (this.work > this.#mostWork) this.#ended = 'steps';
    else if (this.#timeLeftMs() < 0) this.#ended = 'clock';
    return this.#ended === 'searched';
  }

  /** So much of all the work there is. */
  share(part: number): number {
    return part * this.#mostWork;
  }

  get work(): number {
    return this.#parts.reduce((sum, part) => sum + part(), 0);
  }
}
