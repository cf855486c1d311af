/** Bags that Find asks for; one more tells whether there are others, which a further word finds. */
export const MOST_FOUND = 60;
