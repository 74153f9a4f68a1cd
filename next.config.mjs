/** @type {import("next").NextConfig} */
const config = {
  serverExternalPackages: ["better-sqlite3", "highs"],
  // `npm run check` checks the types; a start need not do it again.
  typescript: { ignoreBuildErrors: true },
  poweredByHeader: false,
  reactStrictMode: true,
};

export default config;
