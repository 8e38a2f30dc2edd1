import de from "vivary/search/de";
import { searchIn } from "./search";

searchIn([de]);
