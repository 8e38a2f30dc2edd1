// What a contributor does with records: npm run species new "Genus epithet" | check [id] | show <id> | wanted
const commands = ["new", "check", "show", "wanted"];

const [command, ...given] = process.argv.slice(2);
if (commands.includes(command)) {
  const { default: run } = await import(`./commands/${command}.mjs`);
  process.exitCode = await run(given);
} else {
  console.error(`npm run species new "Genus epithet"   starts a record with the essential traits as questions
npm run species check [id]            lists every problem of one record, or of all
npm run species show <id>             prints a profile, and the verdicts that differ from tests/judgements
npm run species wanted                lists the gaps whose closing would settle most`);
  process.exitCode = 1;
}
