package org.tugtest.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import org.tugtest.finding.Basis;

/**
 * One edge of the band in which a fuse opens: seconds against amperes, falling. Between its points
 * it is a straight line on logarithmic axes (a power law); past the last one the current squared
 * times the time stays what it is there, which is extrapolated.
 */
public final class OpeningCurve {
  /** It never opens, or nothing guarantees that it does. */
  public static final double NEVER = Double.POSITIVE_INFINITY;

  /** A time shorter than this, in seconds, counts as this. */
  private static final double SHORTEST_S = 1e-6;

  private static final double SAME = 1e-9;
  private final List<Point> points;
  private final double secondsBefore;

  /**
   * A point that a table or a part gives.
   *
   * @param amps current, above 0
   * @param seconds time to open at it
   */
  public record Point(double amps, double seconds, String source, Basis basis) {}

  private OpeningCurve(List<Point> points, double secondsBefore) {
    this.points = List.copyOf(points);
    this.secondsBefore = secondsBefore;
  }

  /**
   * The greatest times. What opens by some time opens by then at any greater current too, so a
   * point never lies over one at a smaller current. Below the first point it never opens for
   * certain.
   */
  public static OpeningCurve greatest(Collection<Point> given) {
    List<Point> rising = new ArrayList<>();
    for (Point point : sorted(given, false)) {
      double most = rising.isEmpty() ? NEVER : last(rising).seconds();
      add(rising, point, Math.min(point.seconds(), most));
    }
    return new OpeningCurve(rising, NEVER);
  }

  /**
   * The least times. What holds for some time holds as long at any smaller current too, so a point
   * never lies under one at a greater current. Below the first point the time of that is what is
   * known.
   */
  public static OpeningCurve least(Collection<Point> given) {
    List<Point> falling = new ArrayList<>();
    for (Point point : sorted(given, true)) {
      double least = falling.isEmpty() ? 0 : last(falling).seconds();
      add(falling, point, Math.max(point.seconds(), least));
    }
    List<Point> rising = new ArrayList<>(falling);
    Collections.reverse(rising);
    return new OpeningCurve(rising, rising.isEmpty() ? 0 : rising.get(0).seconds());
  }

  /** By current, and at one current the point that claims least first. */
  private static List<Point> sorted(Collection<Point> given, boolean falling) {
    List<Point> points = new ArrayList<>(given);
    points.sort(
        (one, other) -> {
          int byAmps = Double.compare(one.amps(), other.amps());
          int bySeconds = Double.compare(one.seconds(), other.seconds());
          return byAmps != 0 ? (falling ? -byAmps : byAmps) : falling ? bySeconds : -bySeconds;
        });
    return points;
  }

  private static void add(List<Point> points, Point point, double seconds) {
    if (points.isEmpty() || last(points).amps() != point.amps()) {
      double kept = Math.max(SHORTEST_S, seconds);
      points.add(new Point(point.amps(), kept, point.source(), point.basis()));
    }
  }

  private static Point last(List<Point> points) {
    return points.get(points.size() - 1);
  }

  /** Its points, by current. */
  public List<Point> points() {
    return points;
  }

  /** Whether nothing is known of it. */
  public boolean isEmpty() {
    return points.isEmpty();
  }

  /** The smallest current of a point, in amperes; infinite when there is none. */
  public double firstAmps() {
    return points.isEmpty() ? NEVER : points.get(0).amps();
  }

  /** Whether a current lies past the last point, so that its time is extrapolated. */
  public boolean extrapolated(double amps) {
    return !points.isEmpty() && amps > last(points).amps() * (1 + SAME);
  }

  /** Seconds at a current in amperes; {@link #NEVER} where it never opens. */
  public double seconds(double amps) {
    int above = firstFrom(amps);
    if (above == 0) {
      return points.isEmpty() || amps < points.get(0).amps() * (1 - SAME)
          ? secondsBefore
          : points.get(0).seconds();
    }
    Point low = points.get(above - 1);
    if (above == points.size()) {
      double ratio = Math.max(1, amps / low.amps());
      return low.seconds() / (ratio * ratio);
    }
    Point high = points.get(above);
    double share = Math.log(amps / low.amps()) / Math.log(high.amps() / low.amps());
    return low.seconds() * Math.pow(high.seconds() / low.seconds(), Math.min(1, share));
  }

  /** What the time at a current rests on: the weaker of the points round it. */
  public Basis basis(double amps) {
    if (points.isEmpty()) {
      return Basis.GIVEN;
    }
    int above = firstFrom(amps);
    Basis high = points.get(Math.min(above, points.size() - 1)).basis();
    if (above == 0 || (above < points.size() && amps >= points.get(above).amps() * (1 - SAME))) {
      return high;
    }
    return high.weaker(points.get(above - 1).basis()).weaker(Basis.DERIVED);
  }

  /** The number of the first point that is not below a current. */
  private int firstFrom(double amps) {
    int at = 0;
    while (at < points.size() && points.get(at).amps() < amps * (1 - SAME)) {
      at++;
    }
    return at;
  }
}
