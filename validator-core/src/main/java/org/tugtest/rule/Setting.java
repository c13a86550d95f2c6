package org.tugtest.rule;

/**
 * A figure of a rule that a team may change under {@code limits}.
 *
 * @param name as written there
 * @param standard the value when nothing is written
 * @param least the least value that makes sense
 * @param greatest the greatest value that makes sense
 * @param unit of the value; empty for a count
 * @param meaning what it does, and the source of its standard value
 */
public record Setting(
    String name, double standard, double least, double greatest, String unit, String meaning) {}
