package org.tugtest.bench.ringout;

import org.tugtest.network.Point;

/**
 * A pair of points that a meter must show as not joined, of two nets that could touch.
 *
 * @param number in the list, from 1
 * @param why what brings the two nets together: {@code side by side in X1}
 */
public record Apart(int number, Point from, Point to, String why) {}
