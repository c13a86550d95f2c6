package org.tugtest.rule.body;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.route.Piece;

/**
 * What of a way is run along out and back.
 *
 * @param mm the length that is covered in both directions
 * @param segments where, in the order of the way
 */
record Doubled(double mm, Set<String> segments) {
  /** What a way covers in both directions. */
  static Doubled of(List<Piece> pieces) {
    Map<String, Piece> first = new HashMap<>();
    Set<String> twice = new LinkedHashSet<>();
    for (Piece piece : pieces) {
      if (first.putIfAbsent(piece.segment(), piece) != null) {
        twice.add(piece.segment());
      }
    }
    double mm = 0;
    Set<String> segments = new LinkedHashSet<>();
    for (String segment : twice) {
      double back = bothWays(pieces.stream().filter(p -> p.segment().equals(segment)).toList());
      if (back > 0) {
        mm += back;
        segments.add(segment);
      }
    }
    return new Doubled(mm, segments);
  }

  private static double bothWays(List<Piece> onOne) {
    double mm = 0;
    for (int i = 0; i < onOne.size(); i++) {
      for (int j = i + 1; j < onOne.size(); j++) {
        Piece one = onOne.get(i);
        Piece other = onOne.get(j);
        boolean against = (one.toMm() > one.fromMm()) != (other.toMm() > other.fromMm());
        double low = Math.max(one.lowMm(), other.lowMm());
        double high = Math.min(one.highMm(), other.highMm());
        mm += against && high > low ? high - low : 0;
      }
    }
    return mm;
  }
}
