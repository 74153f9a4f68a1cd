"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useState } from "react";
import { z } from "zod";
import { Button } from "../../../_parts/button";
import { Field } from "../../../_parts/field";
import { Message } from "../../../_parts/message";
import styles from "../import.module.css";

const answer = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("uploaded"), id: z.string() }),
  z.object({ kind: z.enum(["unreadable", "too-large"]), words: z.string() }),
]);

/** Chooses a file and sends it; the browser reads it piece by piece. */
export function UploadForm({ source }: { readonly source: string }) {
  const router = useRouter();
  const [problem, setProblem] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);

  async function send(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const file = form.get("file");
    if (!(file instanceof File) || file.name === "") {
      setProblem("Choose a file first.");
      return;
    }
    setBusy(true);
    setProblem(null);
    const query = new URLSearchParams({ name: file.name, source: String(form.get("source") ?? "") });
    try {
      const response = await fetch(`/api/imports?${query}`, { method: "POST", body: file });
      const read = answer.parse(await response.json());
      if (read.kind === "uploaded") router.push(`/setup/import/${read.id}`);
      else setProblem(read.words);
    } catch {
      setProblem("The file did not arrive. Check that the program is running, then send it again.");
    } finally {
      setBusy(false);
    }
  }

  return (
    <form onSubmit={send} className={styles.form} aria-label="Choose a file">
      {problem === null ? null : <Message kind="error" title={problem} />}
      <Field
        label="Where the file comes from"
        name="source"
        defaultValue={source}
        isRequired
        hint="The same order from the same source is the same parcel, so give one kind of file one name."
      />
      <label className={styles.file}>
        CSV file
        <input type="file" name="file" accept=".csv,.tsv,.txt,text/csv" required />
      </label>
      <Button type="submit" tone="primary" isDisabled={isBusy}>
        {isBusy ? "Sending…" : "Send the file"}
      </Button>
    </form>
  );
}
