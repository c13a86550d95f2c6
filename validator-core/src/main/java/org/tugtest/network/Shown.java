package org.tugtest.network;

import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;

/**
 * What a meter should show between two joined points.
 *
 * @param milliohm at 20 °C, leads taken off; null when a figure on the way is missing
 * @param basis of the weakest figure
 * @param atMost the true figure may be less: the ring between them is too large to be solved
 * @param missing what is missing, such as {@code W3 gives no length}; empty when nothing is
 */
public record Shown(@Nullable Double milliohm, Basis basis, boolean atMost, String missing) {}
