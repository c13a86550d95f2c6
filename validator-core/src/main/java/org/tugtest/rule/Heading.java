package org.tugtest.rule;

import java.util.Locale;

/** What rules are grouped by; the order of the reports. */
public enum Heading {
  /** What is written. */
  WRITTEN,
  /** Plugs, terminals, seals, studs, splices, labels. */
  CONNECTORS,
  /** Feed, fuses, isolation. */
  PROTECTION,
  /** What flows and what arrives. */
  LOAD,
  /** Routes, lengths, bundles, coverings. */
  BODY,
  /** The loom as built. */
  BUILT;

  /** The word in reports and packages. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
