import { describe, expect, it } from "vitest";
import { conductorPath } from "./conductor-path.js";

// hand: a path is the words of the address with the index put in.
describe("where a fact of a conductor stands", () => {
  it("names the group and the fact", () => {
    expect(conductorPath(0, "size")).toBe("joint/conductors/0/size");
    expect(conductorPath(7, "uncut")).toBe("joint/conductors/7/uncut");
  });

  it("names a fact or a group that is not kept ready in the same way", () => {
    expect(conductorPath(0, "insulationRating")).toBe("joint/conductors/0/insulationRating");
    expect(conductorPath(63, "metal")).toBe("joint/conductors/63/metal");
    expect(conductorPath(64, "metal")).toBe("joint/conductors/64/metal");
  });
});
