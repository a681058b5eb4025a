import { readFileSync } from "node:fs";
import {
  CONNECTOR_FAMILIES,
  type Connector,
  compareSizes,
  type Joint,
  type Opening,
  sizeOf,
  type Verdict,
} from "@landfast/rules";
import { describe, expect, test } from "vitest";
import { demoCatalogue, larkfenExpected, larkfenJob, larkfenOpenJob } from "../src/demo-data.js";
import { buildCatalogue } from "./build-catalogue.js";
import { openJob } from "./open-job.js";
import { printedJson } from "./printed-json.js";
import { typeFaults } from "./typed-as.js";

const FILES = {
  catalogue: "catalogue.json",
  job: "larkfen-job.json",
  openJob: "larkfen-job-open.json",
  expected: "larkfen-expected.json",
} as const;

function text(file: string): string {
  return readFileSync(new URL(file, import.meta.url), "utf8");
}

/** What is wrong inside one connector, whether of the catalogue or of an equipment. */
function faultsOf(connector: Connector): string[] {
  const faults: string[] = [];
  const screws = connector.screws.map(({ id }) => id);
  if (new Set(screws).size !== screws.length) faults.push("two screws have one id");
  const openings = connector.openings.map(({ id }) => id);
  if (openings.length === 0) faults.push("no opening");
  if (new Set(openings).size !== openings.length) faults.push("two openings have one id");
  for (const id of screws)
    if (!connector.openings.some(({ screw }) => screw === id)) faults.push(`screw ${id} tightens nothing`);
  for (const opening of connector.openings) faults.push(...openingFaults(opening, screws));
  const { mounting, pin, tooling } = connector;
  if (mounting.kind === "pad" && mounting.pattern.holes > 1 && mounting.pattern.spacing === undefined)
    faults.push("several holes without their spacing");
  if (pin !== undefined) sizeOf(pin.size);
  if (connector.construction === "compression" && (tooling?.tool === undefined || tooling.die === undefined))
    faults.push("a pressed part without tool and die");
  return faults;
}

function openingFaults({ id, count, ranges, screw, stripLength, combinations }: Opening, screws: string[]): string[] {
  const faults: string[] = [];
  if (!(Number.isInteger(count) && count >= 1)) faults.push(`${id}: ${count} openings`);
  if (ranges.length === 0) faults.push(`${id}: no range`);
  for (const { from, to, strandings } of ranges) {
    const [low, high] = [sizeOf(from), sizeOf(to)];
    if (low.series !== high.series || compareSizes(low, high) > 0) faults.push(`${id}: ${from} to ${to} is no range`);
    if (strandings.length === 0) faults.push(`${id}: listed for no strand form`);
    for (const { size } of (combinations ?? []).flat())
      if (compareSizes(sizeOf(size), low) < 0 || compareSizes(sizeOf(size), high) > 0)
        faults.push(`${id}: a combination with ${size} outside the range`);
  }
  if (screw !== undefined && !screws.includes(screw)) faults.push(`${id}: no screw ${screw}`);
  if (stripLength !== undefined && !(stripLength.value > 0)) faults.push(`${id}: no strip length`);
  return faults;
}

describe("the invented catalogue", () => {
  const { items, name, status } = demoCatalogue();

  test("is what the family tables make", () => {
    expect(text(FILES.catalogue)).toBe(printedJson(buildCatalogue()));
  });
  test("says that it is invented, in its name and at every item", () => {
    expect(name).toContain("invented");
    expect([status, ...new Set(items.map((item) => item.status))]).toEqual(["invented", "invented"]);
  });
  test("has at least 250 parts, over every family that is sold apart from equipment", () => {
    expect(items.length).toBeGreaterThanOrEqual(250);
    const sold = CONNECTOR_FAMILIES.filter(
      (family) => family !== "equipment-terminal" && family !== "wiring-device-terminal",
    );
    expect(sold.filter((family) => !items.some((item) => item.family === family))).toEqual([]);
  });
  test("numbers its parts once each, by a word and a running number", () => {
    const numbers = items.map(({ partNumber }) => partNumber);
    expect(new Set(numbers).size).toBe(numbers.length);
    expect(numbers.filter((number) => !/^LF-[A-Z]+-\d{4}$/.test(number))).toEqual([]);
  });
  test("describes no two parts in the same words", () => {
    const seen = items.map(({ description }) => description);
    expect(seen.filter((description, index) => seen.indexOf(description) !== index)).toEqual([]);
  });
  test("holds together inside every part", () => {
    expect(items.map((item) => [item.partNumber, ...faultsOf(item)]).filter(({ length }) => length > 1)).toEqual([]);
  });
  test("prices in dollars and cents, packs and hours above zero", () => {
    const wrong = items.filter(
      ({ price, packQuantity, labourHours = 0 }) =>
        price === undefined ||
        !/^(0|[1-9]\d*)\.\d{2}$/.test(price.amount) ||
        price.currency !== "USD" ||
        !(Number.isInteger(packQuantity) && packQuantity > 0) ||
        !(labourHours > 0),
    );
    expect(wrong).toEqual([]);
  });
});

describe("Larkfen Works", () => {
  const job = larkfenJob();
  const byMark = new Map(job.joints.map((joint) => [joint.mark, joint]));

  test.each([
    [FILES.job, "Job", "@landfast/rules"],
    [FILES.openJob, "Job", "@landfast/rules"],
    [FILES.expected, "LarkfenExpected", "../src/demo-data.js"],
  ])("%s is of its type", { timeout: 60_000 }, (file, type, module) => {
    expect(typeFaults(text(file), type, module)).toEqual([]);
  });
  test("a wrong word or an unknown key is a fault of type", { timeout: 60_000 }, () => {
    const [first] = job.joints;
    const wrong = { ...job, joints: [{ ...first, function: "join" }] };
    const more = { ...job, colour: "blue" };
    for (const value of [wrong, more])
      expect(typeFaults(JSON.stringify(value), "Job", "@landfast/rules")).not.toEqual([]);
  });
  test("is printed as the other files are, so that differences stay small", () => {
    expect(text(FILES.job)).toBe(printedJson(job));
    expect(text(FILES.expected)).toBe(printedJson(larkfenExpected()));
  });
  test("has 73 marks and 286 joints", () => {
    expect([byMark.size, job.joints.length]).toEqual([73, 73]);
    expect(job.joints.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(286);
  });
  test("names sizes that can be read, and terminals that hold together", () => {
    for (const joint of job.joints) {
      for (const { size } of joint.conductors) sizeOf(size);
      const terminal = joint.equipment?.terminal;
      expect([joint.mark, ...(terminal === undefined ? [] : faultsOf(terminal))]).toEqual([joint.mark]);
    }
  });
  test("gives every joint a connector of the catalogue or a terminal of its equipment", () => {
    const numbers = new Set(demoCatalogue().items.map(({ partNumber }) => partNumber));
    const offered = ({ connector, equipment }: Joint): boolean => {
      if (connector === undefined || "described" in connector) return false;
      return "partNumber" in connector ? numbers.has(connector.partNumber) : equipment?.terminal !== undefined;
    };
    expect(job.joints.filter((joint) => !offered(joint)).map(({ mark }) => mark)).toEqual([]);
  });
  test("the open job is the same without the offers", () => {
    const open = larkfenOpenJob();
    expect(text(FILES.openJob)).toBe(printedJson(openJob(job)));
    expect(open.joints.some((joint) => "connector" in joint)).toBe(false);
    expect(open.joints.map(({ mark }) => mark)).toEqual(job.joints.map(({ mark }) => mark));
    // Only the reused lug and the wrong die belong to an offer.
    expect(byMark.get("LKF-068")?.partState).toBe("reused");
    expect(byMark.get("LKF-073")?.tooling).toEqual({ die: "D-71" });
    expect(open.joints.some((joint) => "partState" in joint || "tooling" in joint)).toBe(false);
  });
});

describe("expected answers", () => {
  const { joints } = larkfenExpected();
  const count = (set: string, verdict: Verdict): number =>
    joints.filter((joint) => joint.set === set && joint.verdict === verdict).length;

  test("stand in the order of the job", () => {
    expect(joints.map(({ mark }) => mark)).toEqual(larkfenJob().joints.map(({ mark }) => mark));
  });
  test("are 15 and 32 accepted, 12 refused, 2 asked about, and one refusal more for each of 12 rules", () => {
    expect([
      count("core", "accept"),
      count("core", "accept-with-conditions"),
      count("core", "reject"),
      count("core", "needs-information"),
      count("extended", "reject"),
    ]).toEqual([15, 32, 12, 2, 12]);
    expect(joints).toHaveLength(73);
  });
  test("give a torque only where the joint is accepted, and a reason everywhere", () => {
    for (const { mark, verdict, torqueLbfIn, reason, rules } of joints) {
      expect([mark, reason.endsWith(".")]).toEqual([mark, true]);
      expect([mark, rules.length > 0]).toEqual([mark, true]);
      if (!verdict.startsWith("accept")) expect([mark, torqueLbfIn]).toEqual([mark, [null, null]]);
    }
  });
});
