import { defineConfig } from "drizzle-kit";

// Writes the migrations under drizzle/ from the tables in src/db/schema.ts; the service applies them by itself.
export default defineConfig({ dialect: "sqlite", schema: "./src/db/schema.ts", out: "./drizzle" });
