/** What is said with every answer. */
export const CAUTION =
  "This answer covers listing, size, place and published values only. The code as locally adopted, the authority having jurisdiction and a licensed electrician decide. Work de-energized.";
