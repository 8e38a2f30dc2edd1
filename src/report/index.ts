export { type DescribeOptions, describe } from "./describe";
export { english } from "./messages/english";
export type { Messages, Told, ToldCondition } from "./messages/messages";
export { profileMarkdown } from "./profile-markdown";
export type { UnitSystem } from "./units";
