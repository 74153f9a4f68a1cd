"use server";

import { rm } from "node:fs/promises";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { rememberMapping } from "#prisma/records/import/import-mapping";
import { importRunOf, moveImport } from "#prisma/records/import/import-runs";
import {
  askedValues,
  forgetUnmadeValues,
  rememberValue,
  valueChoices,
} from "#prisma/records/import/import-values";
import { type FormState, refused, typedValues } from "../../_parts/form-state";
import { fileHead } from "../../import/file-head";
import { startImport } from "../../import/start-import";
import { uploadedFile } from "../../import/uploaded-file";
import { withImportConnection } from "../../import/with-import-connection";
import { mappingOfForm } from "./mapping-form";
import { answerOf, valueFieldName } from "./value-form";

/** Keeps which column is which and starts to read the file. */
export async function chooseMapping(runId: string, before: FormState, form: FormData): Promise<FormState> {
  const state = withImportConnection((db) => importRunOf(db, runId))?.state;
  if (state !== "uploaded") redirect(`/setup/import/${runId}`);
  const head = await fileHead(uploadedFile(runId));
  if (head.kind !== "head") redirect(`/setup/import/${runId}`);
  const read = mappingOfForm(typedValues(form), head);
  if (read.kind === "incomplete") return refused(before, form, read.problems);
  withImportConnection((db) => rememberMapping(db, head.headerHash, read.mapping));
  startImport(runId, "stage", new Date().toISOString());
  redirect(`/setup/import/${runId}`);
}

/** Keeps what unknown texts stand for and reads the file again. */
export async function answerValues(runId: string, before: FormState, form: FormData): Promise<FormState> {
  const sent = typedValues(form);
  const problems = withImportConnection((db) => {
    if (importRunOf(db, runId)?.state !== "asking") return {};
    const answers = askedValues(db).map((value) => {
      const ids = valueChoices(db, value.kind).map((choice) => choice.id);
      return { value, answer: answerOf(value, sent[valueFieldName(value)] ?? "", ids) };
    });
    const open = answers.filter(({ answer }) => answer === null);
    if (open.length === 0) {
      for (const { value, answer } of answers) if (answer !== null) rememberValue(db, value, answer);
      startImport(runId, "stage", new Date().toISOString());
    }
    return Object.fromEntries(
      open.map(({ value }) => [valueFieldName(value), "Say what this text stands for."]),
    );
  });
  if (Object.keys(problems).length > 0) return refused(before, form, problems);
  redirect(`/setup/import/${runId}`);
}

/** Books what the preview showed. */
export async function commitRun(runId: string): Promise<void> {
  startImport(runId, "commit", new Date().toISOString());
  revalidatePath("/", "layout");
  redirect(`/setup/import/${runId}`);
}

/** Lets a file go; nothing of it is kept. The next start of the program deletes what it staged. */
export async function cancelRun(runId: string): Promise<void> {
  const isCancelled = withImportConnection((db) => {
    const now = new Date().toISOString();
    if (!moveImport(db, runId, ["uploaded", "asking", "ready"], "cancelled", now)) return false;
    forgetUnmadeValues(db);
    return true;
  });
  if (isCancelled) await rm(uploadedFile(runId), { force: true });
  redirect("/setup/import");
}
