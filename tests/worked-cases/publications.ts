/** The publications that answers come from. Each function takes the place in it: table and row, example, date. */
import type { Source } from "./worked-case.js";

function from(publication: string, seen: Source["seen"]): (at: string) => Source {
  return (at) => ({ publication, at, seen });
}

/** Tables of the code that stand alike in the 2017, 2020 and 2023 editions, under the numbers of 2023. */
export const nfpa70 = from("NFPA 70-2023", "from memory");
/** A public copy of the 2008 text, where the words read there have not changed since. */
export const nfpa70Copy = from("NFPA 70-2008 (public copy)", "read");
export const annexD = from("NFPA 70-2023 Informative Annex D", "from memory");
export const annexC = from("NFPA 70-2023 Informative Annex C", "from memory");
/** A public scan of the annex as the 2011 edition brought it in; the tables have not changed since. */
export const annexI = from("NFPA 70 Informative Annex I (public scan)", "read");
export const annexIUnseen = from("NFPA 70-2023 Informative Annex I", "from memory");
export const handbook = from("NFPA 70 Handbook, commentary", "from memory");
export const ecm = from("EC&M magazine (web)", "read");
export const tradeForum = from("trade forum (web)", "read");
export const tradeBlog = from("trade blog (web)", "read");
export const steelTube = from("Steel Tube Institute, questions on conduit (web)", "read");
export const examinationPage = from("examination practice page (web)", "read");
export const studyText = from("electrical study text (web)", "read");
export const nist = from("NIST SP 811 (2008), appendix B", "from memory");
export const astmWire = from("ASTM B258, nominal diameters", "from memory");
export const icea = from("ICEA P-32-382", "from memory");
export const iceaReprint = from("ICEA P-32-382 (2007), reprinted in part (web)", "read");
export const iec60364 = from("IEC 60364-5-54:2011", "from memory");
export const wiringBook = from("textbook on basic electrical installation work, to BS 7671 (web)", "read");
export const nemaCc1 = from("NEMA CC 1-2009, installation torques", "from memory");
export const netaAts = from("NETA ATS-2021", "from memory");
/** Pages that quote the acceptance and maintenance specifications on low resistance. */
export const testingPage = from("electrical testing page (web)", "read");
export const breakerMaker = from("circuit-breaker maker's answers on contact resistance (web)", "read");
/** Public copies of the table: of the 2003 acceptance specification, and of the maintenance specification. */
export const netaAts2003 = from("NETA ATS-2003 (public copy)", "read");
export const netaMtsPage = from("NETA MTS, reprinted on a page on thermography (web)", "read");
export const armyManual = from("US Army TM 5-3895-374-24-1 (web)", "read");
export const nbsHandbook = from("NBS Handbook 100, Copper Wire Tables", "from memory");
