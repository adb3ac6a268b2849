/** The program's version; a test holds it to the package's manifest. */
export const version = '0.1.0';
