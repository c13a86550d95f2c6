package org.tugtest.network;

import org.tugtest.finding.Basis;

/**
 * How long a wire is, one way, conductor end to conductor end.
 *
 * @param mm length in millimetres, above 0
 * @param basis what the figure rests on
 * @param origin where it comes from, in a few words: {@code built}, {@code cut}, {@code routed}
 */
public record WireLength(double mm, Basis basis, String origin) {}
