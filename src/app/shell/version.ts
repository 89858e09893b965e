/** The version of the app as built, for papers and copies: "0.1.0". */
export const version: string = String(import.meta.env['APP_VERSION'] ?? 'unreleased');
