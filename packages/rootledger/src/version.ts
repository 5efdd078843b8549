/** Version of the library and of its science; every result carries it. */
export const version = "0.1.0";
