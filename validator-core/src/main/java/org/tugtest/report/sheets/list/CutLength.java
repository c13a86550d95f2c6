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

/** What the wires of a harness are cut to. */
final class CutLength {
  /** What the tolerance columns rest on. */
  static final String TOLERANCE =
      "Shorter is not allowed; longer by the figure after + (IPC/WHMA-A-620 table 11-1, draft B for"
          + " industry review).";

  private final Facts facts;

  CutLength(Facts facts) {
    this.facts = facts;
  }

  /** The length in mm: as planned, else as its route is cut, else as built; null: not known. */
  @Nullable Double mm(Wire wire) {
    if (wire.cutMm() != null) {
      return wire.cutMm();
    }
    Optional<Route> route = route(wire);
    return route.isPresent() ? Double.valueOf(route.get().cutMm()) : wire.builtMm();
  }

  /** Where the length comes from, in a word; empty when there is none. */
  String origin(Wire wire) {
    if (wire.cutMm() != null) {
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
