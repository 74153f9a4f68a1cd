import { gzipSync } from "node:zlib";
import { type Measurement, measurement } from "../../measurement";

const SCREENS = [
  "/",
  "/pack",
  "/parcels",
  "/supplies",
  "/supplies/count",
  "/recipes",
  "/setup",
  "/setup/import",
];
const TARGET_KB = 250;
const TARGET_FONTS_KB = 90;
const KB = 1_000;

/**
 * What a browser loads for each screen on a first visit: scripts and styles as sent by gzip, and the fonts.
 *
 * @param url address of the program
 */
export async function pageWeights(url: string): Promise<Measurement[]> {
  const weights: Measurement[] = [];
  const fonts = new Set<string>();
  for (const screen of SCREENS) {
    const html = await (await fetched(`${url}${screen}`)).text();
    const addresses = matches(html, /(?:src|href)="(\/_next\/[^"]+\.(?:js|css)[^"]*)"/g);
    const styles = addresses.filter((address) => /\.css/.test(address));
    for (const style of styles) {
      for (const font of await fontsOf(url, style)) fonts.add(font);
    }
    const bytes = await Promise.all(
      addresses.map(async (address) => gzipSync(await bodyOf(url, address)).length),
    );
    const value = bytes.reduce((sum, size) => sum + size, 0) / KB;
    weights.push(
      measurement({
        area: "foundation",
        name: `script and style of ${screen}`,
        value,
        unit: "kB",
        target: TARGET_KB,
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
