package org.tugtest.report.sheets.list;

/** The stages in which a loom is built, in their order. */
enum BuildStage {
  DONOR("Donor wires", "what becomes of each is settled before anything is cut"),
  CUT("Cut", "every wire, marked at once so that none is mistaken"),
  LAID("Laid in place", "along its way before any covering goes on; it is cut where it ends"),
  GROUPS("Twist and cables", "before their wires are tied down by splices and terminals"),
  SPLICES("Splices", "before coverings hide them; their own covering goes onto a wire first"),
  SLEEVES("Closed coverings", "over bare ends, since no housing passes through them"),
  BRANCHES("Boots and labels", "on the branch before its terminals, for they do not pass these"),
  TERMINALS("Seals and terminals", "each seal onto its wire before the crimp"),
  HOUSINGS("Housings", "insert, tug, close the lock, plug what is left empty"),
  OPEN("Open coverings and supports", "what opens along its side or is wound goes on last"),
  PROOF("Proof", "before it leaves the bench");

  private final String title;
  private final String why;

  BuildStage(String title, String why) {
    this.title = title;
    this.why = why;
  }

  /** Its title. */
  String title() {
    return title;
  }

  /** What to keep in mind. */
  String why() {
    return why;
  }
}
