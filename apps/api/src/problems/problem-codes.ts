/**
 * Everything that can be wrong with a request or the service: one closed list. docs/errors.md and the OpenAPI
 * document name exactly these, and a test holds all three together. A joint that the rules refuse is not here: that
 * is an answer, with status 200.
 */
export interface ProblemKind {
  readonly status: number;
  readonly title: string;
  /** What it means and what to do, in plain words. */
  readonly meaning: string;
}

export const PROBLEMS = {
  MALFORMED_REQUEST: {
    status: 400,
    title: "The request cannot be read",
    meaning: "The address or the HTTP message itself is broken. Correct it as the detail says.",
  },
  MALFORMED_JSON: {
    status: 400,
    title: "The body is not good JSON",
    meaning:
      "The body must be one JSON value in UTF-8, with no name twice in one object, no half of a surrogate pair in a text and no nesting beyond any document this service takes.",
  },
  INVALID_REQUEST: {
    status: 400,
    title: "The request does not have the form that is accepted",
    meaning:
      "A field is unknown, missing, of another type or outside its limits. Each entry of errors points at one place and says what is accepted there. Nothing is coerced, dropped or filled in.",
  },
  ROUTE_NOT_FOUND: {
    status: 404,
    title: "There is nothing at this address",
    meaning: "The OpenAPI document at /openapi.json lists every address.",
  },
  JOB_NOT_FOUND: {
    status: 404,
    title: "There is no such job",
    meaning: "No job with this id is stored. GET /v1/jobs lists those that are.",
  },
  JOINT_NOT_FOUND: {
    status: 404,
    title: "The job has no such joint",
    meaning: "No joint of the job has this mark. The job's schedule lists its marks.",
  },
  CONNECTOR_NOT_FOUND: {
    status: 404,
    title: "The catalogue has no such connector",
    meaning: "No connector of the catalogue has this part number. GET /v1/catalogue/connectors lists them.",
  },
  CATALOGUE_NOT_FOUND: {
    status: 404,
    title: "There is no such catalogue",
    meaning: "No catalogue of yours with this id is stored. GET /v1/catalogues lists those that are.",
  },
  CATALOGUE_VERSION_NOT_FOUND: {
    status: 404,
    title: "The catalogue has no such version",
    meaning: "The catalogue has no version of this number. GET /v1/catalogues/{id} lists its versions.",
  },
  IMPORT_NOT_FOUND: {
    status: 404,
    title: "The catalogue has no such import",
    meaning:
      "No version of the catalogue came of an import with this id. GET /v1/catalogues/{id}/imports lists those that did.",
  },
  IMPORT_MAPPING_NOT_FOUND: {
    status: 404,
    title: "There is no such column mapping",
    meaning: "No column mapping with this id is saved. GET /v1/import-mappings lists those that are.",
  },
  PRICE_LIST_NOT_FOUND: {
    status: 404,
    title: "There is no such price list",
    meaning: "No price list with this id is stored. GET /v1/price-lists lists those that are.",
  },
  LABOUR_TABLE_NOT_FOUND: {
    status: 404,
    title: "There is no such labor table",
    meaning: "No labor table with this id is stored. GET /v1/labour-tables lists those that are.",
  },
  CALCULATION_NOT_FOUND: {
    status: 404,
    title: "There is no such calculation",
    meaning: "No calculation has this name. GET /v1/calculations lists them.",
  },
  TABLE_NOT_FOUND: {
    status: 404,
    title: "There is no such table",
    meaning: "No published table has this address. GET /v1/tables lists them.",
  },
  PROBLEM_NOT_FOUND: {
    status: 404,
    title: "There is no such kind of problem",
    meaning: "GET /problems lists every kind.",
  },
  METHOD_NOT_ALLOWED: {
    status: 405,
    title: "This address does not take that method",
    meaning: "The Allow header names the methods that it takes.",
  },
  NOT_ACCEPTABLE: {
    status: 406,
    title: "The answer is not to be had in that form",
    meaning: "The Accept header allows none of the forms that are offered here; the detail names them.",
  },
  BODY_TOO_LARGE: {
    status: 413,
    title: "The body is too large",
    meaning: "The body has more bytes than are taken. Split the job.",
  },
  UNSUPPORTED_MEDIA_TYPE: {
    status: 415,
    title: "The body is not sent in a form that is taken here",
    meaning:
      "Send the body with Content-Type: application/json; a catalogue file as text/csv in UTF-8 or as an XLSX workbook with its own media type.",
  },
  INCONSISTENT_REQUEST: {
    status: 422,
    title: "The facts of the request contradict each other",
    meaning:
      "Each field by itself is of the right form, but together they cannot be true: two joints with one mark, a range whose lower end lies above its upper end, a load given twice. Each entry of errors points at one place.",
  },
  UNKNOWN_PART_NUMBER: {
    status: 422,
    title: "The catalogue has no such part",
    meaning:
      "A joint names a part number that the catalogue does not hold. Correct it, describe the connector in full, or leave it out to have one chosen.",
  },
  UNKNOWN_CATALOGUE: {
    status: 422,
    title: "There is no such catalogue to work with",
    meaning:
      "The request names a catalogue or a version that is not stored. Name one that GET /v1/catalogues lists, or leave it out to use the catalogue that the service was started with.",
  },
  NOT_IN_FORCE: {
    status: 422,
    title: "The catalogue or the part is not in force",
    meaning:
      "A version of a catalogue or a part named in the request is not in force on the day in question: it begins later, has ended, or is superseded. Name its successor, another version, or another day.",
  },
  NO_SUCH_PLAN: {
    status: 422,
    title: "No plan keeps to the limit",
    meaning:
      "No plan makes every joint with as few part numbers as mostPartNumbers allows. The plan with the fewest part numbers says how many it takes.",
  },
  OUT_OF_TIME: {
    status: 422,
    title: "The time limit came before any plan",
    meaning: "Not even a first plan was found in the seconds that secondsPerSolve allows. Allow more, or ask for less.",
  },
  IMPORT_UNREADABLE: {
    status: 422,
    title: "The file cannot be read",
    meaning:
      "The file as a whole cannot be read: its encoding, its header, its quotation marks, its sheet or its form. The error says where and what would be accepted. Nothing was stored.",
  },
  IMPORT_TOO_LARGE: {
    status: 422,
    title: "The file has more than is taken",
    meaning: "The file has more rows, columns or unpacked bytes than are taken, as the detail says. Split it.",
  },
  IMPORT_COLUMNS_MISSING: {
    status: 422,
    title: "The file lacks columns that every row needs",
    meaning:
      "No row can be a connector without the columns named. Say in a mapping which columns they are, or state constants for them. Nothing was stored.",
  },
  IMPORT_ROWS_REFUSED: {
    status: 422,
    title: "Rows of the file are refused",
    meaning:
      "Each entry of errors points at a line and a column; a dry run reports every one. Mend the file, or choose with partial=true to store the good rows without the others. Nothing was stored.",
  },
  IMPORT_NOT_CONFIRMED: {
    status: 422,
    title: "What was recognised in the file is not confirmed",
    meaning:
      "Spellings in the file were recognised, or what was confirmed is not what the file now reads as. Make a dry run, look at what its report says was recognised, and send its digest as confirm. Nothing was stored.",
  },
  TOO_MANY_JOINTS: {
    status: 422,
    title: "The job has too many joints",
    meaning: "A job has a limit of marks, named in the detail. Split it.",
  },
  INTERNAL: {
    status: 500,
    title: "The service failed",
    meaning:
      "A defect of the service; the request was not carried out and nothing was stored. The log holds the cause.",
  },
  NOT_READY: {
    status: 503,
    title: "The service is not ready",
    meaning: "It is starting, stopping, or cannot reach its store. Try again shortly.",
  },
  BUSY: {
    status: 503,
    title: "Too many joints at once",
    meaning: "The jobs already in work come first. Try again after the seconds that Retry-After names.",
  },
} as const satisfies Readonly<Record<string, ProblemKind>>;

export type ProblemCode = keyof typeof PROBLEMS;
export const PROBLEM_CODES = Object.keys(PROBLEMS) as readonly ProblemCode[];
