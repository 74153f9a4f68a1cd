import { gzipSync } from "node:zlib";
import { type Measurement, measurement } from "../../measurement";

const SCREENS = [
  "/",
  "/pack",
  "/parcels",
  "/supplies",
  "/supplies/count",
  "/recipes",
  "/outlook",
  "/setup",
  "/setup/import",
];
const TARGET_KB = 250;
/** A screen that draws charts, the library for them included. */
const TARGETS_KB: ReadonlyMap<string, number> = new Map([["/outlook", 320]]);
const TARGET_FONTS_KB = 90;
const KB = 1_000;

/**
 * What a browser loads for each screen on a first visit: scripts and styles as sent by gzip, with those that the
 * scripts fetch afterwards, and the fonts.
 *
 * @param url address of the program
 */
export async function pageWeights(url: string): Promise<Measurement[]> {
  const weights: Measurement[] = [];
  const fonts = new Set<string>();
  for (const screen of SCREENS) {
    const sent = await (await fetched(`${url}${screen}`)).text();
    // A browser that knows modules never fetches these; all that the program runs in do.
    const html = sent.replaceAll(/<script[^>]*\snoModule=[^>]*>/g, "");
    const addresses = matches(html, /(?:src|href)="(\/_next\/[^"]+\.(?:js|css)[^"]*)"/g);
    const styles = addresses.filter((address) => /\.css/.test(address));
    for (const style of styles) {
      for (const font of await fontsOf(url, style)) fonts.add(font);
    }
    const bodies = await withFetchedLater(url, addresses);
    const value = [...bodies.values()].reduce((sum, body) => sum + gzipSync(body).length, 0) / KB;
    weights.push(
      measurement({
        area: "foundation",
        name: `script and style of ${screen}`,
        value,
        unit: "kB",
        target: TARGETS_KB.get(screen) ?? TARGET_KB,
      }),
    );
  }
  if (fonts.size === 0) throw new Error("No screen names a font: the measurement reads the wrong thing");
  const sizes = await Promise.all([...fonts].map(async (font) => (await bodyOf(url, font)).length));
  const value = sizes.reduce((sum, size) => sum + size, 0) / KB;
  return [
    ...weights,
    measurement({ area: "foundation", name: "fonts", value, unit: "kB", target: TARGET_FONTS_KB }),
  ];
}

/** Files by address, and the scripts that their text names: those are fetched once the page stands. */
async function withFetchedLater(url: string, addresses: readonly string[]): Promise<Map<string, Buffer>> {
  const bodies = new Map<string, Buffer>();
  let next = [...addresses];
  while (next.length > 0) {
    const found = await Promise.all(
      next.map(async (address) => [address, await bodyOf(url, address)] as const),
    );
    for (const [address, body] of found) bodies.set(address, body);
    const named = found.flatMap(([, body]) =>
      matches(body.toString("utf8"), /"(static\/chunks\/[^"]+\.js)"/g).map((path) => `/_next/${path}`),
    );
    next = [...new Set(named)].filter((address) => !bodies.has(address));
  }
  return bodies;
}

async function fontsOf(url: string, style: string): Promise<string[]> {
  const css = (await bodyOf(url, style)).toString("utf8");
  return matches(css, /url\(["']?([^"')]+\.woff2[^"')]*)["']?\)/g).map(
    (address) => new URL(address, `${url}${style}`).pathname,
  );
}

async function bodyOf(url: string, address: string): Promise<Buffer> {
  return Buffer.from(await (await fetched(`${url}${address}`)).arrayBuffer());
}

async function fetched(address: string): Promise<Response> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} answered ${response.status}`);
  return response;
}

function matches(text: string, pattern: RegExp): string[] {
  return [
    ...new Set([...text.matchAll(pattern)].flatMap(([, found]) => (found === undefined ? [] : [found]))),
  ];
}
