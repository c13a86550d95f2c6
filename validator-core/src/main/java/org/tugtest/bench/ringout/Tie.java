package org.tugtest.bench.ringout;

import java.util.List;
import org.tugtest.network.Point;

/**
 * One insulation reading between many nets: one point of each is tied to one or the other side.
 *
 * @param number in the list, from 1
 * @param what it parts, in words
 * @param one points that are tied together on one lead
 * @param other points that are tied together on the other lead
 */
public record Tie(int number, String what, List<Point> one, List<Point> other) {
  public Tie {
    one = List.copyOf(one);
    other = List.copyOf(other);
  }
}
