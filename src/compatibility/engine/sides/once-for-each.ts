import type { Subject } from "./subject";

/** What is made of subjects, made once for each as long as no other takes its place. */
export function onceForEach<Made>(make: (subject: Subject) => Made): (subject: Subject) => Made {
  const known: { readonly subject: Subject; readonly made: Made }[] = [];
  return (subject) => {
    const held = known[subject.index];
    if (held?.subject === subject) return held.made;
    const made = make(subject);
    known[subject.index] = { subject, made };
    return made;
  };
}
