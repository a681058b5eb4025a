/** The version of the rules; a stored answer names the one it was made with. */
export const RULES_VERSION = "0.1.0";
