package org.tugtest.bench.rework;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.text.NaturalOrder;

/**
 * What a change lays hands on, in the loom as it comes out.
 *
 * @param wires ids of wires that come new, that do not reach any more, or of which an end is put
 *     somewhere else, crimped anew or spliced anew
 * @param points where such ends sit
 * @param gone wires that are taken out, by id
 */
public record Touched(Set<String> wires, Set<Point> points, Map<String, Wire> gone) {
  public Touched {
    wires = Collections.unmodifiableSet(wires);
    points = Collections.unmodifiableSet(points);
    gone = Collections.unmodifiableMap(gone);
  }

  /** What changes from one loom to another. */
  public static Touched of(Facts now, Facts target, Matching matching) {
    List<Piece> pieces = Pieces.of(now, target, matching);
    Bodies bodies = new Bodies(now, target, matching);
    Sitting wanted = Sitting.target(target, pieces, bodies);
    Jobs jobs = new Jobs(Sitting.now(now, pieces, bodies), wanted, new Reuse(now, target, bodies));
    Set<String> wires = new TreeSet<>(NaturalOrder.NATURAL);
    Set<Point> points = new TreeSet<>();
    for (Job job : jobs.all()) {
      job.wanted().ends().forEach(end -> wires.add(end.piece().name()));
      bodies.pointTarget(job.to()).ifPresent(points::add);
    }
    for (Piece piece : new Ways(now, target, matching, pieces, jobs, false).tooShort()) {
      wires.add(piece.name());
      for (boolean first : List.of(true, false)) {
        new PieceEnd(piece, first)
            .target()
            .flatMap(end -> target.wiring().pointOf(end.ref()))
            .ifPresent(points::add);
      }
    }
    Map<String, Wire> gone = new TreeMap<>(NaturalOrder.NATURAL);
    for (Piece piece : pieces) {
      if (piece.now() != null && piece.target() == null) {
        gone.put(piece.now().id(), piece.now());
      }
    }
    return new Touched(wires, points, gone);
  }
}
