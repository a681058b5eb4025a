// A small clean set of published files, the ground every broken fixture is made from.

export type SampleJson = Record<string, unknown>;

/** Sidecar of a small table of each key kind, and the CSV beside it. Numbers are invented. */
export const SAMPLES: Readonly<Record<string, { readonly meta: SampleJson; readonly csv: string }>> = {
  "std/2023/by-size": {
    meta: {
      id: "by-size",
      title: "invented table by size",
      source: { standard: "STD 1", edition: "2023", locator: "Table 1" },
      status: "published",
      cells: [{ rows: ["250 kcmil"], columns: ["warm"], status: "unconfirmed", note: "seen once" }],
      unit: "A",
      rowKey: { kind: "size" },
      columns: { cold: { title: "cold" }, warm: { title: "warm" } },
      blank: { "": "not given" },
      terms: { none: "no limit" },
      transcribed: { by: "one", on: "2024-02-29" },
      checked: { by: "two", on: "2024-03-01", method: "second entry" },
      checks: {
        rows: 4,
        columnSums: { cold: 60.3, warm: 90 },
        nonDecreasing: ["cold", "warm"],
        ordered: [["cold", "warm"]],
      },
      notes: ["invented"],
    },
    csv: "size,cold,warm\n14 AWG,10.1,\n1 AWG,20.2,30\n1/0 AWG,none,none\n250 kcmil,30,60\n",
  },
  "std/2023/by-range": {
    meta: {
      id: "by-range",
      title: "invented table by range of sizes",
      source: { standard: "STD 1", edition: "2023", locator: "Table 2" },
      status: "unconfirmed",
      unit: "in",
      rowKey: { kind: "size-range" },
      columns: { space: { title: "space" } },
      transcribed: { by: "one", on: "2024-01-05" },
      checked: { by: "two", on: "2024-01-05", method: "second entry" },
      checks: { rows: 2, columnSums: { space: 3.5 } },
    },
    csv: "from,to,space\n14 AWG,8 AWG,1.5\n6 AWG,1/0 AWG,2\n",
  },
  "std/2023/by-interval": {
    meta: {
      id: "by-interval",
      title: "invented table by interval",
      source: { standard: "STD 1", edition: "2023", locator: "Table 3" },
      status: "published",
      unit: "term",
      rowKey: { kind: "interval", unit: "A" },
      columns: { wire: { title: "wire", holds: "size" } },
      transcribed: { by: "one", on: "2024-01-05" },
      checked: { by: "two", on: "2024-01-05", method: "second entry" },
      checks: { rows: 3, nonDecreasing: ["wire"], openEnds: ["over"] },
    },
    csv: "over,upTo,wire\n,15,14 AWG\n15,20.5,12 AWG\n20.5,60,1/0 AWG\n",
  },
  "std/2023/by-term": {
    meta: {
      id: "by-term",
      title: "invented table by term",
      source: { standard: "STD 1", edition: "2023", locator: "Table 4" },
      status: "invented",
      unit: "term",
      rowKey: { kind: "term" },
      columns: { use: { title: "use", oneOf: ["yes", "no"] } },
      transcribed: { by: "one", on: "2024-01-05" },
      checked: { by: "two", on: "2024-01-05", method: "second entry" },
      checks: { rows: 2 },
    },
    csv: "key,use\nalpha,yes\nbeta,no\n",
  },
};

/** Sidecar of the same table in another edition. */
export const SAME_SAMPLE: SampleJson = {
  id: "by-term",
  sameAs: "2023",
  source: { standard: "STD 1", edition: "2020", locator: "Table 4 (old)" },
  transcribed: { by: "one", on: "2024-01-05" },
  checked: { by: "two", on: "2024-01-05", method: "second entry" },
};

const encoder = new TextEncoder();

/** Bytes of a text as a file holds them. */
export function bytesOf(text: string): Uint8Array {
  return encoder.encode(text);
}

/** The clean set as files below data/published. */
export function sampleFiles(): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const [place, { meta, csv }] of Object.entries(SAMPLES)) {
    files.set(`${place}.meta.json`, bytesOf(`${JSON.stringify(meta)}\n`));
    files.set(`${place}.csv`, bytesOf(csv));
  }
  files.set("std/2020/by-term.meta.json", bytesOf(`${JSON.stringify(SAME_SAMPLE)}\n`));
  files.set("README.md", bytesOf("prose\n"));
  return files;
}
