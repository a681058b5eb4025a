import { build } from "./build.mjs";

build();
await import("../apps/api/dist/demo.js");
