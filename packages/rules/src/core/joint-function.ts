/** What a joint does: joins conductors end to end, lands one on equipment, or takes a branch off a run. */
export type JointFunction = "splice" | "termination" | "tap";
export const JOINT_FUNCTIONS: readonly JointFunction[] = ["splice", "termination", "tap"];
