package org.tugtest.rule.load;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.heat.LoomSections;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.heat.Section;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.OverClassByAir;

/** How hot wires get in the lasting states of a harness, and which of it is known. */
final class HotWires {
  private final LoomSections sections;
  private final List<OperatingPoint> lasting;
  private final List<OperatingPoint> warm;
  private final boolean settled;
  private final boolean flows;
  private final Set<String> unknown = new HashSet<>();
  private final boolean[] lacking;

  /** A wire in the state and the place where it is hottest, over its class most. */
  record Hot(
      Edge.OfWire wire, OperatingPoint state, LoomWarmth warmth, LoomWarmth.Hottest hottest) {
    Section section() {
      return warmth.sections().at(hottest.stretch());
    }

    double classC() {
      return section().conductors().get(hottest.stretch().place()).form().maxC();
    }

    boolean overClass() {
      return !hottest.steady() || hottest.celsius() > classC();
    }
  }

  HotWires(Facts facts) {
    this.sections = facts.sections();
    this.lasting = facts.operating().all().stream().filter(state -> !state.brief()).toList();
    this.warm =
        lasting.stream()
            .filter(state -> state.warmth().isPresent() && state.warmthSettled())
            .toList();
    this.settled = lasting.stream().allMatch(OperatingPoint::warmthSettled);
    this.flows = lasting.stream().anyMatch(OperatingPoint::flows);
    Set<String> carrying = new HashSet<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfWire wire) {
        if (lasting.stream().anyMatch(state -> !state.ampsKnown(edge))) {
          unknown.add(wire.wire().id());
        }
        if (lasting.stream().anyMatch(state -> state.heatAmps(edge) > 0)) {
          carrying.add(wire.wire().id());
        }
      }
    }
    this.lacking = new boolean[sections.all().size()];
    for (int i = 0; i < lacking.length; i++) {
      Section section = sections.all().get(i);
      lacking[i] =
          section.unsized().stream().anyMatch(wire -> carrying.contains(wire))
              || section.conductors().stream().anyMatch(one -> unknown.contains(one.wire()));
    }
  }

  /** Why nothing can be said of a wire; empty when something can. */
  String missing(Edge.OfWire wire) {
    if (sections.of(wire.wire().id()).isEmpty()) {
      return "its size is not known";
    }
    if (lasting.isEmpty()) {
      return "no state lasts";
    }
    if (warm.isEmpty()) {
      return "no state has currents that last";
    }
    if (!flows) {
      return "nothing flows in any lasting state";
    }
    Hot worst = worst(wire).orElse(null);
    boolean byAir = worst != null && worst.section().ambientC().value() > worst.classC();
    return byAir ? OverClassByAir.WHY : "";
  }

  /** Why a wire that seems cool enough may not be so; empty when it is. */
  String unsure(Edge.OfWire wire) {
    String id = wire.wire().id();
    if (unknown.contains(id)) {
      return "what flows through it is not known";
    }
    if (!settled) {
      return "in a state currents and temperatures come to no rest";
    }
    boolean beside = sections.of(id).stream().anyMatch(stretch -> lacking[stretch.section()]);
    return beside ? "what flows beside it, or its size, is not known" : "";
  }

  /** Where and when a wire is hottest; the first state of equal ones. */
  Optional<Hot> worst(Edge.OfWire wire) {
    Hot worst = null;
    for (OperatingPoint state : warm) {
      LoomWarmth warmth = state.warmth().orElse(null);
      LoomWarmth.Hottest here =
          warmth == null ? null : warmth.hottest(wire.wire().id()).orElse(null);
      if (warmth != null
          && here != null
          && (worst == null || here.celsius() > worst.hottest().celsius())) {
        worst = new Hot(wire, state, warmth, here);
      }
    }
    return Optional.ofNullable(worst);
  }
}
