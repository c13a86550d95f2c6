package org.tugtest.bench.rework;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.WireLength;
import org.tugtest.route.Allowance;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** Whether wires still reach when terminals are cut off, or ends go elsewhere. */
final class Reach {
  /** What a small terminal takes with it: 15 to 25 mm, the greatest (common practice). */
  static final double CUT_OFF_MM = 25;

  private static final double NEAR_ZERO = 0.5;
  private static final int MOST_NAMED = 12;
  private final Facts now;
  private final Facts target;
  private final Map<PieceEnd, Seat> fresh = new HashMap<>();
  private final Map<PieceEnd, Boolean> moved = new HashMap<>();
  private final Set<String> unjudged = new TreeSet<>(NaturalOrder.NATURAL);

  /** The length that is planned, and how much of it is spare. */
  private record Need(double plannedMm, double spareMm) {}

  Reach(Facts now, Facts target, Jobs jobs) {
    this.now = now;
    this.target = target;
    for (Job job : jobs.all()) {
      for (PieceEnd end : job.wanted().ends()) {
        boolean had = job.sources().stream().anyMatch(unit -> unit.ends().contains(end));
        if (end.piece().kept() && had && job.fresh()) {
          fresh.put(end, job.to());
        }
        boolean elsewhere =
            job.sources().stream().noneMatch(u -> u.seat().owner().equals(job.to().owner()));
        moved.put(end, elsewhere);
      }
    }
  }

  /** What to say of the length of a wire that is put back; none: nothing. */
  List<String> remarks(PieceEnd end) {
    Piece piece = end.piece();
    Wire is = piece.now();
    Wire becomes = piece.target();
    if (is == null || becomes == null) {
      return List.of();
    }
    List<PieceEnd> cut =
        List.of(end, end.other()).stream().filter(fresh::containsKey).sorted().toList();
    Optional<WireLength> has = now.lengths().of(is);
    Optional<Need> needs = needs(becomes, cut);
    if (has.isEmpty() || needs.isEmpty()) {
      if (!cut.isEmpty() || moved.getOrDefault(end, false)) {
        unjudged.add(piece.name());
      }
      return List.of();
    }
    double left = has.get().mm() - CUT_OFF_MM * cut.size();
    double lacks = needs.get().plannedMm() - left;
    if (lacks < NEAR_ZERO) {
      return cut.isEmpty()
          ? List.of()
          : List.of(
              piece.name()
                  + " still reaches: "
                  + mm(left)
                  + " left, "
                  + mm(needs.get().plannedMm())
                  + " needed");
    }
    double spare = needs.get().spareMm();
    String figures = mm(left) + " left, " + mm(needs.get().plannedMm()) + " planned";
    return lacks <= spare
        ? List.of(
            piece.name() + " reaches by its spare at the ends: " + figures + ", spare " + mm(spare))
        : List.of(
            piece.name()
                + " does not reach: "
                + figures
                + "; splice a piece in, or fit a new wire");
  }

  /** Which wires were asked for and could not be judged, in one sentence; none: no sentence. */
  List<String> unjudged() {
    return unjudged.isEmpty()
        ? List.of()
        : List.of(
            "not judged whether it reaches, since its present or its wanted length is not told: "
                + Series.and(List.copyOf(unjudged), MOST_NAMED));
  }

  /** By the layout, when it gives a way: else by the length that is planned for the wire. */
  private Optional<Need> needs(Wire becomes, List<PieceEnd> cut) {
    Optional<Need> routed =
        target
            .routes()
            .of(becomes.id())
            .filter(route -> route.routedMm() > 0)
            .map(route -> new Need(route.routedMm(), route.allowanceMm(Allowance.Kind.SERVICE)));
    return routed.or(
        () ->
            target
                .lengths()
                .of(becomes)
                .map(
                    planned ->
                        new Need(planned.mm(), cut.stream().mapToDouble(this::spare).sum())));
  }

  /** The spare wire that is planned at an end. */
  private double spare(PieceEnd end) {
    Seat seat = fresh.get(end);
    Double own = seat == null ? null : own(seat);
    return own == null ? target.harness().defaults().serviceMm() : own;
  }

  private @Nullable Double own(Seat seat) {
    if (seat.kind() == Point.Kind.SPLICE) {
      return 0.0;
    }
    if (seat.kind() == Point.Kind.CAVITY) {
      Connector connector = target.harness().connectors().get(seat.owner());
      return connector == null ? null : connector.serviceMm();
    }
    Device device = target.harness().devices().get(seat.owner());
    DeviceType type = device == null ? null : target.harness().typeOf(device);
    DeviceType.Pin pin = type == null ? null : type.pins().get(seat.name());
    return pin == null ? null : pin.serviceMm();
  }

  private static String mm(double value) {
    return BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_EVEN).toPlainString() + " mm";
  }
}
