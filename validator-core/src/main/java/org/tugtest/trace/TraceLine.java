package org.tugtest.trace;

import org.jspecify.annotations.Nullable;
import org.tugtest.text.Place;

/**
 * One line of a trace.
 *
 * @param depth how far to indent it: each line hangs on the nearest one above it of less depth
 * @param text what is there
 * @param at where that is written; null where the line only concludes
 */
public record TraceLine(int depth, String text, @Nullable Place at) {}
