import { searchIn } from "./search";

searchIn([]);
