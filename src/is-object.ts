/** Whether a value is an object with fields: no list, and no map, set, date or promise, whose fields would say nothing. */
export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  Object.prototype.toString.call(value) === "[object Object]";
