/** The front door: everything public, nothing else. */
export * from "./core/citation.js";
export * from "./core/conductor.js";
export * from "./core/conductor-size.js";
export * from "./core/connector.js";
export * from "./core/edition.js";
export * from "./core/exact.js";
export * from "./core/finding.js";
export * from "./core/joint.js";
export * from "./core/quantity.js";
export * from "./core/rule.js";
export * from "./core/table.js";
export * from "./core/worksheet.js";
export * from "./topics/joint/joint-finding.js";
export * from "./topics/preparation/preparation-answer.js";
export * from "./topics/schedule/connector-schedule.js";
export * from "./topics/selection/selection.js";
export * from "./topics/torque/torque-answer.js";
