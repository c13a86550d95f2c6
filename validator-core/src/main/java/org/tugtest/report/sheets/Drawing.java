package org.tugtest.report.sheets;

/**
 * Something drawn, or made for a page alone.
 *
 * @param html put on the page as it is: its maker has escaped what files say (see {@link Markup})
 */
public record Drawing(String html) implements Block {}
