package org.tugtest.report.console;

import org.jspecify.annotations.Nullable;

/**
 * What the closing block of a check cannot know of itself.
 *
 * @param report path of the report to open; null when none was written
 * @param explain command that explains a rule, up to the rule's id
 * @param trace command that traces a contact, up to the contact
 * @param adopt command that writes out what a sketch implies
 */
public record Ending(@Nullable String report, String explain, String trace, String adopt) {}
