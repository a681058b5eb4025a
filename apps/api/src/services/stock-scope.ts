import { pointerTo } from "../problems/problem.js";
import { inconsistent } from "./stock-inputs.js";
import type { JobStock } from "./stock-problem.js";

/** Which joints of a job are meant; absent: all. */
export interface StockScope {
  readonly marks?: readonly string[];
  readonly areas?: readonly string[];
}

/**
 * The part of a job's stock that is meant. A class of which only some marks are meant keeps its id.
 * @param marksOfJob every mark of the job with its area.
 * @throws Problem INCONSISTENT_REQUEST for a mark or an area that the job does not have.
 */
export function stockWithin(
  stock: JobStock,
  marksOfJob: ReadonlyMap<string, string | null>,
  { marks, areas }: StockScope,
): JobStock {
  refuseUnknown(marksOfJob, { ...(marks === undefined ? {} : { marks }), ...(areas === undefined ? {} : { areas }) });
  if (marks === undefined && areas === undefined) return stock;
  const [inMarks, inAreas] = [new Set(marks), new Set(areas)];
  const isMeant = (mark: string): boolean =>
    (marks === undefined || inMarks.has(mark)) && (areas === undefined || inAreas.has(marksOfJob.get(mark) ?? ""));
  return {
    classes: stock.classes.flatMap((one) => {
      const meant = one.marks.filter(({ mark }) => isMeant(mark));
      return meant.length === 0
        ? []
        : [{ ...one, marks: meant, joints: meant.reduce((sum, { joints }) => sum + joints, 0) }];
    }),
    noPartNeeded: stock.noPartNeeded.filter(({ mark }) => isMeant(mark)),
    withoutPart: stock.withoutPart.flatMap((one) => {
      const meant = one.marks.filter(({ mark }) => isMeant(mark));
      if (meant.length === 0) return [];
      return [{ ...one, marks: meant, joints: meant.reduce((sum, { joints }) => sum + joints, 0) }];
    }),
  };
}

function refuseUnknown(marksOfJob: ReadonlyMap<string, string | null>, { marks = [], areas = [] }: StockScope): void {
  const known = new Set(marksOfJob.values());
  const faults = [
    ...marks.flatMap((mark, at) =>
      marksOfJob.has(mark)
        ? []
        : [
            {
              pointer: pointerTo("/marks", at),
              detail: `the job has no mark "${mark}"`,
              accepted: "a mark of the job",
            },
          ],
    ),
    ...areas.flatMap((area, at) =>
      known.has(area)
        ? []
        : [
            {
              pointer: pointerTo("/areas", at),
              detail: `the job has no area "${area}"`,
              accepted: "an area of the job",
            },
          ],
    ),
  ];
  if (faults.length > 0) throw inconsistent(faults);
}
