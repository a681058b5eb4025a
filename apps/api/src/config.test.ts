import { describe, expect, it } from "vitest";
import { ConfigError, readConfig } from "./config.js";

describe("the configuration", () => {
  it("has a default for what is absent", () => {
    expect(readConfig({})).toEqual({
      port: 8080,
      host: "127.0.0.1",
      databaseFile: "var/landfast.sqlite",
      logLevel: "info",
    });
  });

  it("takes what is given", () => {
    expect(readConfig({ PORT: "0", HOST: "::1", DATABASE_FILE: "/data/x.sqlite", LOG_LEVEL: "debug" })).toEqual({
      port: 0,
      host: "::1",
      databaseFile: "/data/x.sqlite",
      logLevel: "debug",
    });
  });

  it.each([
    ["PORT", "80a"],
    ["PORT", ""],
    ["PORT", "-1"],
    ["PORT", "65536"],
    ["PORT", "8.5"],
    ["HOST", ""],
    ["HOST", "a b"],
    ["DATABASE_FILE", " "],
    ["LOG_LEVEL", "loud"],
  ])("refuses %s=%j and says what is accepted", (name, value) => {
    expect(() => readConfig({ [name]: value })).toThrow(ConfigError);
    expect(() => readConfig({ [name]: value })).toThrow(new RegExp(`${name} is .*accepted is`));
  });

  it("names everything that is wrong at once", () => {
    expect(() => readConfig({ PORT: "x", LOG_LEVEL: "y" })).toThrow(/PORT.*LOG_LEVEL/s);
  });
});
