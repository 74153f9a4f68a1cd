"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import { classList } from "./class-list";
import styles from "./navigation.module.css";

type Screen = { readonly href: string; readonly name: string };

const THIS_WEEK: Screen = { href: "/", name: "This week" };
const PACK: Screen = { href: "/pack", name: "Pack" };
const PARCELS: Screen = { href: "/parcels", name: "Parcels" };
const SUPPLIES: Screen = { href: "/supplies", name: "Supplies" };
const CARTONS: Screen = { href: "/cartons", name: "Cartons" };
const RECIPES: Screen = { href: "/recipes", name: "Recipes" };
const PAPER_OR_BUBBLE: Screen = { href: "/paper-or-bubble", name: "Paper or bubble" };
const OUTLOOK: Screen = { href: "/outlook", name: "Outlook" };
const BUYING: Screen = { href: "/buying", name: "Buying" };
const POSTAGE: Screen = { href: "/postage", name: "Postage" };
const IMPORT: Screen = { href: "/setup/import", name: "Import" };
const SETUP: Screen = { href: "/setup", name: "Setup" };

const ON_THE_DESK = [
  THIS_WEEK,
  PACK,
  PARCELS,
  SUPPLIES,
  CARTONS,
  RECIPES,
  PAPER_OR_BUBBLE,
  OUTLOOK,
  BUYING,
  POSTAGE,
  IMPORT,
  SETUP,
];
const ON_THE_TABS = [THIS_WEEK, PACK, SUPPLIES];
const BEHIND_MORE = [PARCELS, CARTONS, RECIPES, PAPER_OR_BUBBLE, OUTLOOK, BUYING, POSTAGE, IMPORT, SETUP];

/** The way to every screen: one row at the top of a desk, four tabs at the foot of a phone. */
export function Navigation() {
  const path = usePathname();
  const isUnderMore = BEHIND_MORE.some((screen) => isHere(path, screen));
  return (
    <>
      <a href="#content" className={styles.skip}>
        Skip to the content
      </a>
      <header className={styles.top}>
        <Link href="/" className={styles.mark}>
          wadding
        </Link>
        <nav aria-label="Screens" className={styles.row}>
          {ON_THE_DESK.map((screen) => (
            <ScreenLink key={screen.href} screen={screen} path={path} />
          ))}
        </nav>
      </header>
      <nav aria-label="Screens, tabs" className={styles.tabs}>
        {ON_THE_TABS.map((screen) => (
          <ScreenLink key={screen.href} screen={screen} path={path} />
        ))}
        <details key={path} className={styles.more}>
          <summary className={classList(styles.link, isUnderMore && styles.here)}>More</summary>
          <div className={styles.menu}>
            {BEHIND_MORE.map((screen) => (
              <ScreenLink key={screen.href} screen={screen} path={path} />
            ))}
          </div>
        </details>
      </nav>
    </>
  );
}

/** One entry; the screen it leads to is marked as the current one on all pages under it. */
function ScreenLink({ screen, path }: { readonly screen: Screen; readonly path: string }) {
  const current = isHere(path, screen);
  return (
    <Link
      href={screen.href}
      className={classList(styles.link, current && styles.here)}
      {...(current ? { "aria-current": "page" as const } : {})}
    >
      {screen.name}
    </Link>
  );
}

function isHere(path: string, screen: Screen): boolean {
  if (screen !== IMPORT && path.startsWith(IMPORT.href)) return false;
  return path === screen.href || (screen.href !== "/" && path.startsWith(`${screen.href}/`));
}
