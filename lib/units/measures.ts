/** How a shop reads and shows lengths and masses: inches, feet and ounces, or centimetres and grams. */
export type Measures = "imperial" | "metric";
