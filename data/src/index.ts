/** The front door of the data package: the invented demonstration catalogue and job. */
export * from "./demo-data.js";
