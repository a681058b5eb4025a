import type { StockProblem } from "../problem/stock-problem.js";

/** Three classes of one joint; A makes 1 and 2, B makes 2 and 3 at 1.00, C makes all three at 5.00. */
export const threeParts: StockProblem = {
  classes: ["1", "2", "3"].map((id) => ({ id, joints: 1, marks: [`mark-${id}`], areas: [] })),
  items: [
    ["A", "1"],
    ["B", "1"],
    ["C", "5"],
  ].map(([partNumber = "", amount = ""]) => ({
    partNumber,
    packQuantity: 1,
    price: { unit: "each", currency: "USD", breaks: [{ from: 1, amount }] },
  })),
  feasible: [
    ["1", "A", "C"],
    ["2", "A", "B", "C"],
    ["3", "B", "C"],
  ].map(([classId = "", ...partNumbers]) => ({
    classId,
    makers: partNumbers.map((partNumber) => ({ partNumber, verdict: "accept", partsPerJoint: 1, labourHours: 0.5 })),
  })),
};
