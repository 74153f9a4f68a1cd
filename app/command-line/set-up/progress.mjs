const TENTHS_PER_SECOND = 10;
const MS_PER_TENTH = 100;

/**
 * Tells the person at the terminal that something slow begins, and how long it took.
 * On stderr, so that a command's answer on stdout stays clean.
 *
 * @template T
 * @param {string} name what is done, as a person would say it: "Installing packages"
 * @param {() => Promise<T>} work
 * @returns {Promise<T>} what the work returned
 */
export async function progress(name, work) {
  const began = Date.now();
  process.stderr.write(`${name} …\n`);
  const result = await work();
  const seconds = Math.round((Date.now() - began) / MS_PER_TENTH) / TENTHS_PER_SECOND;
  process.stderr.write(`${name}: done in ${seconds} s\n`);
  return result;
}
