package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Seal;
import org.tugtest.model.Terminal;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.Studs;
import org.tugtest.network.WireEnd;
import org.tugtest.text.Series;

/** Which wire ends sit where: as the loom is, or as it is wanted. */
final class Sitting {
  private final Facts facts;
  private final Bodies bodies;
  private final Map<Seat, List<Unit>> units = new TreeMap<>();
  private final Map<PieceEnd, Unit> unitOf = new HashMap<>();
  private final List<PieceEnd> loose = new ArrayList<>();
  private final List<String> refused = new ArrayList<>();

  private Sitting(Facts facts, Bodies bodies) {
    this.facts = facts;
    this.bodies = bodies;
  }

  /** The loom as it is. Where it already holds two ends they come out as one. */
  static Sitting now(Facts facts, List<Piece> pieces, Bodies bodies) {
    Sitting sitting = new Sitting(facts, bodies);
    sitting.place(pieces, PieceEnd::now, bodies::now, false);
    return sitting;
  }

  /** The loom that is wanted. Of ends that a seat cannot hold, all but one stay loose. */
  static Sitting target(Facts facts, List<Piece> pieces, Bodies bodies) {
    Sitting sitting = new Sitting(facts, bodies);
    sitting.place(pieces, PieceEnd::target, bodies::target, true);
    return sitting;
  }

  private void place(
      List<Piece> pieces,
      Function<PieceEnd, Optional<WireEnd>> side,
      Function<Point, Seat> seatOf,
      boolean wanted) {
    Map<Seat, List<PieceEnd>> ends = new TreeMap<>();
    Map<Seat, Point> points = new HashMap<>();
    for (Piece piece : pieces) {
      for (boolean first : List.of(true, false)) {
        PieceEnd end = new PieceEnd(piece, first);
        Optional<WireEnd> its = side.apply(end);
        if (its.isEmpty()) {
          continue;
        }
        Optional<Point> point = point(its.get());
        if (point.isEmpty()) {
          loose.add(end);
          continue;
        }
        Seat seat = seatOf.apply(point.get());
        points.put(seat, point.get());
        ends.computeIfAbsent(seat, none -> new ArrayList<>(1)).add(end);
      }
    }
    ends.forEach(
        (seat, its) -> {
          Point point = points.getOrDefault(seat, Point.splice(seat.owner()));
          if (bodies.single(seat)) {
            add(together(seat, point, wanted ? allowed(seat, point, its, side) : its, side));
          } else {
            its.forEach(end -> add(alone(seat, end, side)));
          }
        });
  }

  private Optional<Point> point(WireEnd end) {
    return end.ref() != null && facts.wiring().resolve(end.ref()) instanceof Resolution.Found found
        ? Optional.of(found.point())
        : Optional.empty();
  }

  private List<PieceEnd> allowed(
      Seat seat, Point point, List<PieceEnd> its, Function<PieceEnd, Optional<WireEnd>> side) {
    List<WireEnd> ends = its.stream().map(side).flatMap(Optional::stream).toList();
    boolean over;
    if (point.kind() == Point.Kind.CAVITY) {
      over = facts.fitting().overfilled(point);
    } else {
      Studs.Stack stack = Studs.stack(facts.harness(), point, ends);
      over = stack.terminals() > stack.allowed();
    }
    if (!over) {
      return its;
    }
    List<PieceEnd> sorted = its.stream().sorted(Comparator.naturalOrder()).toList();
    refused.add(
        seat.text()
            + " shall hold "
            + Series.and(sorted.stream().map(end -> end.piece().name()).toList())
            + "; it takes one terminal: only "
            + sorted.get(0).piece().name()
            + " is put there");
    return sorted.subList(0, 1);
  }

  private Unit together(
      Seat seat, Point point, List<PieceEnd> ends, Function<PieceEnd, Optional<WireEnd>> side) {
    if (point.kind() != Point.Kind.CAVITY) {
      return new Unit(seat, ends, alone(seat, ends.get(0), side).terminal(), null);
    }
    Terminal terminal = facts.fitting().terminal(point).part();
    Seal seal = facts.fitting().seal(point).part();
    return new Unit(
        seat, ends, terminal == null ? null : terminal.id(), seal == null ? null : seal.id());
  }

  private static Unit alone(Seat seat, PieceEnd end, Function<PieceEnd, Optional<WireEnd>> side) {
    boolean pin = seat.kind() == Point.Kind.PIN;
    String terminal = pin ? side.apply(end).map(WireEnd::terminal).orElse(null) : null;
    return new Unit(seat, List.of(end), terminal, null);
  }

  private void add(Unit unit) {
    units.computeIfAbsent(unit.seat(), none -> new ArrayList<>(1)).add(unit);
    unit.ends().forEach(end -> unitOf.put(end, unit));
  }

  /** All units, by seat. */
  List<Unit> all() {
    return units.values().stream().flatMap(List::stream).toList();
  }

  /** The units in a seat; more than one only on studs and in splices. */
  List<Unit> in(Seat seat) {
    return units.getOrDefault(seat, List.of());
  }

  /** The unit that an end is in; null: it hangs loose. */
  @Nullable Unit of(PieceEnd end) {
    return unitOf.get(end);
  }

  /** Ends that name nothing. */
  List<PieceEnd> loose() {
    return loose.stream().sorted().toList();
  }

  /** Why some ends have no place. */
  List<String> refused() {
    return refused;
  }
}
