const STYLE = `
:root { color-scheme: light dark; --ground: #fbf9f4; --raised: #fff; --ink: #24211c; --second: #6a6458; --edge: #8e8672; --act: #a8431b; }
@media (prefers-color-scheme: dark) {
  :root { --ground: #191815; --raised: #211f1b; --ink: #ece6da; --second: #a49c8c; --edge: #8b8370; --act: #e08a62; }
}
body { margin: 0 auto; max-width: 30rem; padding: 2rem 1.125rem; background: var(--ground); color: var(--ink);
  font: 1.0625rem/1.5 system-ui, sans-serif; }
h1 { font: 400 1.75rem/1.2 Georgia, serif; margin: 0 0 0.75rem; }
p { margin: 0 0 1.125rem; }
.second { color: var(--second); }
.problem { color: var(--act); font-weight: 600; }
label { display: block; margin: 0 0 1.125rem; font-weight: 600; }
input { display: block; box-sizing: border-box; width: 100%; min-height: 56px; margin-top: 0.25rem; padding: 0 0.75rem;
  border: 1px solid var(--edge); border-radius: 6px; background: var(--raised); color: inherit; font: inherit; font-weight: 400; }
input[name="code"] { letter-spacing: 0.15em; font-variant-numeric: tabular-nums; }
button { width: 100%; min-height: 56px; border: 0; border-radius: 6px; background: var(--ink); color: var(--ground);
  font: inherit; font-weight: 600; }
:focus-visible { outline: 3px solid var(--act); outline-offset: 2px; }
`;

/**
 * The page on which a device of the house shows the code and is let in. It tells nothing of the shop.
 *
 * @param {{ code: string, name: string, problem: string | null }} shown what stands in the fields, and what was wrong
 * @returns {string} HTML
 */
export function pairingPage({ code, name, problem }) {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Pair this device · wadding</title>
<style>${STYLE}</style>
</head>
<body>
<main>
<h1>Pair this device with wadding.</h1>
${problem === null ? "" : `<p class="problem" role="alert">${escaped(problem)}</p>`}
<p>On the computer on which wadding runs, open Setup, then Other devices, and press “Pair a device”. It shows a code.</p>
<form method="post" action="/pair">
<label>The code
<input name="code" inputmode="numeric" autocomplete="one-time-code" required value="${escaped(code)}">
</label>
<label>A name for this device
<input name="name" maxlength="40" autocomplete="off" required value="${escaped(name)}">
</label>
<button type="submit">Pair this device</button>
</form>
<p class="second" style="margin-top:1.125rem">What goes between this device and the computer is not encrypted: pair only in a network that you trust.</p>
</main>
</body>
</html>
`;
}

/** @param {string} text */
function escaped(text) {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
