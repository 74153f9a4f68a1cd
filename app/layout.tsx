import type { Metadata, Viewport } from "next";
import localFont from "next/font/local";
import type { ReactNode } from "react";
import { Navigation } from "./_parts/navigation";
import "./tokens.css";
import "./base.css";

const serif = localFont({
  src: "../node_modules/@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2",
  weight: "200 900",
  variable: "--serif-face",
  display: "swap",
  adjustFontFallback: "Times New Roman",
});

const sans = localFont({
  src: "../node_modules/@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2",
  weight: "200 900",
  variable: "--sans-face",
  display: "swap",
});

// Every screen reads the shop's own database at the time it is asked for.
export const dynamic = "force-dynamic";

export const metadata: Metadata = {
  title: { default: "This week · wadding", template: "%s · wadding" },
  description: "What packing supplies to order, and by which day.",
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  viewportFit: "cover",
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#fbf9f4" },
    { media: "(prefers-color-scheme: dark)", color: "#191815" },
  ],
};

/** The frame of every screen: the way past the navigation, the navigation, the screen. */
export default function Layout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en" className={`${serif.variable} ${sans.variable}`}>
      <body>
        <Navigation />
        {children}
      </body>
    </html>
  );
}
