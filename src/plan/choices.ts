import { frozen } from "../frozen";

/**
 * What individuals are like beside their kind. `shyer`: hide, need company that settles them, yield food; `bolder`: do not
 * hide, and do whenever they can what others do only when crowded or breeding; `bully`: bolder, and chase whoever is not
 * clearly larger.
 */
export type Temper = "shyer" | "typical" | "bolder" | "bully";

/** Every temper, for forms, from the shyest on. */
export const tempers: readonly Temper[] = /* @__PURE__ */ frozen(["shyer", "typical", "bolder", "bully"]);

/** Whether plants grow in a tank, and whether they have grown in. */
export type Planting = "none" | "planted" | "grown-in";

/** Every way in which a tank may be planted, for forms. */
export const plantings: readonly Planting[] = /* @__PURE__ */ frozen(["none", "planted", "grown-in"]);
