import { startApp } from "./app";

await startApp();
