/** Voltage drop: NFPA 70 Chapter 9 Tables 8 and 9 read through the calculation, and examples in print. */
import type { ConduitMaterial, Length } from "@landfast/rules";
import { celsius } from "./plain-run.js";
import { examinationPage, handbook, nfpa70, studyText, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"voltage-drop">;

const feet = (value: number): Length => ({ value, unit: "ft" });
const KFT = feet(1000);

/** Chapter 9 Table 9, effective impedance at 0.85, uncoated copper: PVC, aluminum conduit, steel; ohms to neutral per kft. */
const EFFECTIVE: readonly (readonly [string, Readonly<Record<ConduitMaterial, number>>])[] = [
  ["12 AWG", { PVC: 1.7, aluminum: 1.7, steel: 1.7 }],
  ["8 AWG", { PVC: 0.69, aluminum: 0.69, steel: 0.7 }],
  ["4 AWG", { PVC: 0.29, aluminum: 0.29, steel: 0.3 }],
  ["1/0 AWG", { PVC: 0.13, aluminum: 0.13, steel: 0.13 }],
  ["4/0 AWG", { PVC: 0.074, aluminum: 0.078, steel: 0.08 }],
  ["250 kcmil", { PVC: 0.066, aluminum: 0.07, steel: 0.073 }],
  ["500 kcmil", { PVC: 0.043, aluminum: 0.048, steel: 0.05 }],
];

function effectiveCells(): readonly PublishedCase<"voltage-drop">[] {
  return EFFECTIVE.flatMap(([size, ohms]) =>
    (["PVC", "aluminum", "steel"] as const).map(
      (conduit): PublishedCase<"voltage-drop"> => ({
        id: `voltage-drop/table-9/${size}/${conduit}`,
        question: `Drop of 1 A over 1000 ft and back, ${size} copper in ${conduit} conduit, 0.85?`,
        kind: "published",
        form: "table",
        source: nfpa70(`Chapter 9 Table 9, effective Z, copper, ${size}, ${conduit}: ${String(ohms[conduit])} ohm/kft`),
        asked: {
          ask: "drop",
          system: "single-phase",
          voltageV: 240,
          loadA: 1,
          sets: 1,
          metal: "copper",
          impedance: { kind: "effective-impedance", conduit },
          size,
          length: KFT,
        },
        expected: [{ result: "voltage drop", value: 2 * ohms[conduit], unit: "V" }],
      }),
    ),
  );
}

const EXAMPLES: readonly Case[] = [
  {
    id: "voltage-drop/16-awg-at-24-v",
    question: "Two wires of 16 AWG stranded copper, 100 ft, 4 A, 24 V: how much is lost?",
    kind: "published",
    form: "example",
    source: studyText("on low-voltage circuits: 2 x 100 x 4.99 / 1000 x 4 = 4.0 V, 16.7 %"),
    asked: {
      ask: "drop",
      system: "dc",
      voltageV: 24,
      loadA: 4,
      sets: 1,
      metal: "copper",
      impedance: {
        kind: "dc-resistance",
        stranding: "stranded",
        coating: "uncoated",
        temperature: celsius(75),
      },
      size: "16 AWG",
      length: feet(100),
    },
    expected: [
      { result: "voltage drop", value: 4, unit: "V", within: 0.05 },
      { result: "voltage drop in percent", value: 16.7, unit: "%", within: 0.1 },
    ],
  },
  {
    id: "voltage-drop/12-awg-at-16-a",
    question: "16 A over 100 ft of 12 AWG copper at 120 V?",
    kind: "published",
    form: "example",
    source: tradeForum("home repair group on voltage drop: about 2 ohm per 1000 ft, 0.4 ohm, 5.33 %"),
    asked: {
      ask: "drop",
      system: "dc",
      voltageV: 120,
      loadA: 16,
      sets: 1,
      metal: "copper",
      impedance: {
        kind: "dc-resistance",
        stranding: "stranded",
        coating: "uncoated",
        temperature: celsius(75),
      },
      size: "12 AWG",
      length: feet(100),
    },
    expected: [{ result: "voltage drop in percent", value: 5.33, unit: "%", within: 0.1 }],
    note: "The group rounds 1.98 ohm to 2.",
  },
  {
    id: "voltage-drop/10-awg-50-ft",
    question: "16 A at 115 V over 50 ft of 10 AWG copper, unity power factor?",
    kind: "published",
    form: "example",
    source: examinationPage("voltage drop questions, no. 3: 16 x 1.2 x 100 / 1000 = 1.92 V"),
    asked: {
      ask: "drop",
      system: "single-phase",
      voltageV: 115,
      loadA: 16,
      sets: 1,
      metal: "copper",
      impedance: { kind: "resistance-and-reactance", conduit: "PVC", powerFactor: 1 },
      size: "10 AWG",
      length: feet(50),
    },
    expected: [{ result: "voltage drop", value: 1.92, unit: "V", within: 0.000001 }],
  },
  {
    id: "voltage-drop/12-awg-100-ft",
    question: "8 A at 120 V over 100 ft of 12 AWG copper, unity power factor?",
    kind: "published",
    form: "example",
    source: examinationPage("voltage drop questions, no. 4: 8 x 2 x 200 / 1000 = 3.2 V"),
    asked: {
      ask: "drop",
      system: "single-phase",
      voltageV: 120,
      loadA: 8,
      sets: 1,
      metal: "copper",
      impedance: { kind: "resistance-and-reactance", conduit: "PVC", powerFactor: 1 },
      size: "12 AWG",
      length: feet(100),
    },
    expected: [{ result: "voltage drop", value: 3.2, unit: "V", within: 0.000001 }],
  },
  {
    id: "voltage-drop/18-kva-at-208-v",
    question: "18 kVA three-phase at 208 V over 100 ft of 2 AWG copper, unity power factor?",
    kind: "published",
    form: "example",
    source: examinationPage("voltage drop questions, no. 5: 1.732 x 12.9 x 50 x 100 / 66 360 = 1.68 V"),
    asked: {
      ask: "drop",
      system: "three-phase",
      voltageV: 208,
      loadA: 50,
      sets: 1,
      metal: "copper",
      impedance: { kind: "resistance-and-reactance", conduit: "PVC", powerFactor: 1 },
      size: "2 AWG",
      length: feet(100),
    },
    expected: [{ result: "voltage drop", value: 1.68, unit: "V", within: 0.05 }],
    note: "12.9 / 66.36 = 0.1944 ohm/kft is the dc resistance; Table 9 prints 0.19 for ac, two figures.",
  },
  {
    id: "voltage-drop/three-phase-1-awg",
    question: "100 A three-phase at 240 V, 1 AWG copper in aluminum conduit, 150 ft, 0.85: what is left at the load?",
    kind: "published",
    form: "example",
    source: handbook("first example to Chapter 9 Table 9: 2.40 V to neutral, 4.157 V between lines"),
    asked: {
      ask: "drop",
      system: "three-phase",
      voltageV: 240,
      loadA: 100,
      sets: 1,
      metal: "copper",
      impedance: { kind: "effective-impedance", conduit: "aluminum" },
      size: "1 AWG",
      length: feet(150),
    },
    expected: [{ result: "voltage at the load", value: 235.843, unit: "V", within: 0.001 }],
    note: "The drop itself is asserted beside the calculation; here the voltage that is left.",
  },
  {
    id: "voltage-drop/larkfen-feeder",
    question: "180 A, 620 ft, 480 V three-phase, 500 kcmil aluminum, resistance alone: drop?",
    kind: "hand",
    working: "1.7320508 x 180 x 0.0424 x 620 / 1000 = 8.1957 V, 1.707 %; direct current over two wires 2 x instead",
    asked: {
      ask: "drop",
      system: "dc",
      voltageV: 480,
      loadA: 180,
      sets: 1,
      metal: "aluminum",
      impedance: { kind: "dc-resistance", stranding: "stranded", temperature: celsius(75) },
      size: "500 kcmil",
      length: feet(620),
    },
    // 2 x 180 x 0.0424 x 620 / 1000
    expected: [{ result: "voltage drop", value: 9.46368, unit: "V", within: 0.000001 }],
  },
  {
    id: "voltage-drop/size-for-3-percent",
    question: "16 A, 120 V, 100 ft, 0.85 in PVC conduit, not over 3 %: which copper?",
    kind: "hand",
    working: "3.6 V / (2 x 16 x 0.1) = 1.125 ohm/kft: 10 AWG has 1.1, 12 AWG 1.7",
    asked: {
      ask: "size-for-limit",
      system: "single-phase",
      voltageV: 120,
      loadA: 16,
      sets: 1,
      metal: "copper",
      impedance: { kind: "effective-impedance", conduit: "PVC" },
      length: feet(100),
      limitPercent: 3,
    },
    expected: [{ value: "10 AWG" }],
  },
  {
    id: "voltage-drop/longest-run",
    question: "How far may 12 AWG copper go at 16 A, 120 V, 3 %, 0.85 in PVC conduit?",
    kind: "hand",
    working: "3.6 / (2 x 16 x 1.7) x 1000 = 66.18 ft",
    asked: {
      ask: "longest-run",
      system: "single-phase",
      voltageV: 120,
      loadA: 16,
      sets: 1,
      metal: "copper",
      impedance: { kind: "effective-impedance", conduit: "PVC" },
      size: "12 AWG",
      limitPercent: 3,
    },
    expected: [{ value: 66.1764, unit: "ft", within: 0.001 }],
  },
];

export const VOLTAGE_DROP_CASES: readonly Case[] = [...EXAMPLES, ...effectiveCells()];
