/** Says on standard error what stands in the way; answers the exit status. */
export function complain(text: string, status: number): number {
  process.stderr.write(`${text}\n`);
  return status;
}
