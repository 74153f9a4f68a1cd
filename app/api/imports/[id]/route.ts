import { importRunOf } from "#prisma/records/import/import-runs";
import { withImportConnection } from "../../../import/with-import-connection";

/** How far an import is. */
export async function GET(
  _request: Request,
  context: { params: Promise<{ id: string }> },
): Promise<Response> {
  const { id } = await context.params;
  const run = withImportConnection((db) => importRunOf(db, id));
  if (run === null) return Response.json({ kind: "not-found" }, { status: 404 });
  return Response.json({ kind: "import", state: run.state, rowsRead: run.rowsRead });
}
