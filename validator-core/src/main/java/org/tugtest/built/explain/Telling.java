package org.tugtest.built.explain;

import org.tugtest.network.Point;

/**
 * A reading that tells two explanations apart.
 *
 * @param from where to hold one probe
 * @param to where to hold the other
 * @param joinedByFirst whether it shows a joint when the likelier one holds; for the other it shows
 *     the contrary
 */
public record Telling(Point from, Point to, boolean joinedByFirst) {}
