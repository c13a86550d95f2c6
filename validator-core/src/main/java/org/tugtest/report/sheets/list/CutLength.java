package org.tugtest.report.sheets.list;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Loom;
import org.tugtest.model.Wire;
import org.tugtest.report.sheets.Cell;
import org.tugtest.route.NoRoute;
import org.tugtest.route.Route;
import org.tugtest.table.LengthToleranceTable;

/** What the wires of a harness are cut to, or how long they are that are laid in place. */
final class CutLength {
  /** What the tolerance columns rest on. */
  static final String TOLERANCE =
      "Shorter is not allowed; longer by the figure after + (IPC/WHMA-A-620 table 11-1, draft B for"
          + " industry review).";

  /** What stands for the cut length of a wire that has none. */
  static final String LAID = "laid in place";

  private final Facts facts;

  CutLength(Facts facts) {
    this.facts = facts;
  }

  /**
   * The length in mm: as planned, else as its route is cut, or as its route needs for a wire laid
   * in place, else as built; null: not known.
   */
  @Nullable Double mm(Wire wire) {
    if (planned(wire)) {
      return wire.cutMm();
    }
    Optional<Route> route = route(wire);
    return route.isPresent() ? Double.valueOf(route.get().plannedMm(wire)) : wire.builtMm();
  }

  private static boolean planned(Wire wire) {
    return wire.cutMm() != null && !wire.laidInPlace();
  }

  /** Where the length comes from, in a word; empty when there is none. */
  String origin(Wire wire) {
    if (wire.laidInPlace()) {
      return LAID;
    }
    if (planned(wire)) {
      return "planned";
    }
    return route(wire).isPresent() ? "routed" : wire.builtMm() != null ? "as built" : "";
  }

  /** The length it needs along its way, which counts for a wire laid in place; null: no way. */
  @Nullable Double routedMm(Wire wire) {
    return route(wire).map(Route::routedMm).orElse(null);
  }

  /** A route that leads somewhere. */
  Optional<Route> route(Wire wire) {
    return facts.routes().of(wire.id()).filter(route -> route.routedMm() > 0);
  }

  /** How much longer it may be, in mm; null when its length is not known. */
  @Nullable Double plusMm(Wire wire) {
    Double mm = mm(wire);
    return mm == null ? null : Double.valueOf(LengthToleranceTable.plusMm(mm).value());
  }

  /** The length as a cell, or why it is not known. */
  Cell cell(Wire wire) {
    return Cell.number(mm(wire), 0, why(wire));
  }

  /** The nodes it passes, or why they are not known. */
  Cell way(Wire wire) {
    return route(wire)
        .map(route -> Cell.text(String.join(" – ", route.nodes())))
        .orElseGet(() -> Cell.unknown(why(wire)));
  }

  /** Why there is no length. */
  String why(Wire wire) {
    return facts
        .routes()
        .missing(wire.id())
        .map(NoRoute::why)
        .map(NoRoute.Why::reason)
        .orElse("no length given");
  }

  /** Whether it is there already: it carries a decision, or its loom is as taken from the donor. */
  boolean fromDonor(Wire wire) {
    Loom loom = wire.loom() == null ? null : facts.harness().looms().get(wire.loom());
    return wire.decision() != null || (loom != null && loom.stage() == Loom.Stage.FOUND);
  }
}
