import type { Database } from "#prisma/client";
import { cartonSettingsOf } from "#prisma/records/carton-terms";
import { habitsOf } from "#prisma/records/habits";
import { suppliesOf } from "#prisma/records/supplies";
import type { OutsideGround } from "./outside-size";

/** Reads what the outside of a carton is worked out from; cartons that were taken off are among them. */
export async function readOutsideGround(db: Database): Promise<OutsideGround> {
  const [supplies, { settings }, habits] = await Promise.all([
    suppliesOf(db, { retired: true }),
    cartonSettingsOf(db),
    habitsOf(db),
  ]);
  return {
    cartons: supplies.filter(({ kind }) => kind === "carton"),
    bulgeUm: settings.bulgeUm,
    boardPoundsPerSquareFoot: habits.boardPoundsPerSquareFoot,
  };
}
