package org.tugtest.report.console;

import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Level;

/**
 * What the closing block of a check cannot know of itself.
 *
 * @param report path of the report to open; null when none was written
 * @param explain command that explains a rule, up to the rule's id
 * @param trace command that traces a contact, up to the contact
 * @param adopt command that writes out what a sketch implies
 * @param from level from which on findings were looked for and are told; {@link Level#NOTE}: all
 */
public record Ending(
    @Nullable String report, String explain, String trace, String adopt, Level from) {

  /** The end of a check that looks for findings of all levels. */
  public Ending(@Nullable String report, String explain, String trace, String adopt) {
    this(report, explain, trace, adopt, Level.NOTE);
  }
}
