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
    title: "The body is not sent as JSON",
    meaning: "Send the body with Content-Type: application/json.",
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
