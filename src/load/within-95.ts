/** A normal distribution lies within so many standard deviations in 95 of 100 cases. */
export const within95 = 1.96;
