/** Writes to standard output and waits until it is taken, so that a large file is whole when the program ends. */
export function writeOut(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.write(text, (fault) => (fault ? reject(fault) : resolve()));
  });
}
