/** The JSON that a request brought, or why there is none. */
export type SentJson =
  | { readonly kind: "json"; readonly value: unknown }
  | {
      readonly kind: "unreadable";
      readonly status: 400 | 415;
      readonly message: string;
      readonly wayOut: string;
    };

/**
 * Reads the JSON of a request. Its content type must say JSON: no form of another site can send that.
 *
 * @param request as it came in
 * @param what what is sent, for the words: "A parcel"
 */
export async function sentJson(request: Request, what: string): Promise<SentJson> {
  if (!(request.headers.get("content-type") ?? "").toLowerCase().startsWith("application/json")) {
    const wayOut = "Set the content type to application/json.";
    return { kind: "unreadable", status: 415, message: `${what} is sent as JSON.`, wayOut };
  }
  try {
    return { kind: "json", value: await request.json() };
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    const wayOut = "Check brackets, quotes and commas.";
    return { kind: "unreadable", status: 400, message: "The text sent is not JSON.", wayOut };
  }
}
