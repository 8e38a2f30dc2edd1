// Writes the pages of some of the profiles, in a process of its own: `share.ts <first> <of> <parts>` takes every `of`-th.
import { allProfiles, profilePages } from "./all-pages";
import { writePages } from "./write-pages";

const [first = "0", of = "1", parts = "{}"] = process.argv.slice(2);
const own = allProfiles.filter((_, index) => index % Number(of) === Number(first));
for (const profile of own) await writePages(profilePages(profile), JSON.parse(parts));
