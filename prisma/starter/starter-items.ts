import { STARTER_GLASS } from "#prisma/starter/starter-glass";
import type { StarterItem } from "#prisma/starter/starter-item";
import { STARTER_OTHERS } from "#prisma/starter/starter-others";
import { STARTER_POTTERY } from "#prisma/starter/starter-pottery";

/** Every item type that a new shop may copy. */
export const STARTER_ITEMS: readonly StarterItem[] = [
  ...STARTER_POTTERY,
  ...STARTER_GLASS,
  ...STARTER_OTHERS,
];
