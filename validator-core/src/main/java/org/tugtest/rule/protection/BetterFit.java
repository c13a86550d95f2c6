package org.tugtest.rule.protection;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.heat.Ampacities;
import org.tugtest.heat.Ampacity;
import org.tugtest.heat.WireForm;
import org.tugtest.heat.WireForms;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.Ratings;
import org.tugtest.rule.LastingAmps;
import org.tugtest.rule.PartChoice;
import org.tugtest.table.AwgTable;
import org.tugtest.table.Cited;
import org.tugtest.table.FuseRatingTable;

/** What would suit a wire and its fuses better: the next stocked wire part, the next less fuse. */
final class BetterFit {
  private static final double[] SIZES = {
    0.35, 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95
  };

  /** A fuse may carry so much of its rating for long in warm air, as fuse-near-rating has it. */
  private static final double LOADED = 0.7;

  private final Facts facts;
  private final PartChoice choice;
  private final Ampacities heat;
  private final Ratings ratings;

  BetterFit(Facts facts) {
    this.facts = facts;
    this.choice = new PartChoice(facts);
    this.heat = facts.ampacity();
    this.ratings = facts.protection().ratings();
  }

  /** A remedy with figures for a wire that stands less than its fuses let through. */
  String remedy(Wire wire, Stress stress) {
    String larger = larger(wire, stress);
    Optional<String> lesser =
        stress.cut().size() == 1 ? lesser(wire, stress.cut().get(0)) : Optional.empty();
    return larger + lesser.map(fuse -> ", or " + fuse).orElse("");
  }

  /** The greatest rating, of any style, that a wire allows; empty without its size or any. */
  Optional<Double> greatestFuse(Wire wire) {
    Ampacity ampacity = heat.of(wire).orElse(null);
    WireForm form = heat.forms().of(wire).orElse(null);
    if (ampacity == null || form == null) {
      return Optional.empty();
    }
    return FuseRatingTable.ratings("").stream()
        .filter(rating -> rating <= ampacity.amps())
        .filter(
            rating ->
                !Overload.of(heat, wire, null, new Stress(rating, rating * Stress.HELD, List.of()))
                    .tooHot(form.maxC()))
        .max(Double::compare);
  }

  private String larger(Wire wire, Stress stress) {
    double least = area(heat.forms().part(wire), wire);
    Edge.OfWire edge =
        facts
            .protection()
            .exposure(wire.id())
            .or(() -> facts.protection().returning(wire.id()))
            .map(Exposure::wire)
            .orElse(null);
    List<WirePart> stocked = choice.larger(wire);
    WirePart enough = null;
    for (WirePart part : stocked) {
      if (passes(wire, part, stress).isPresent() && (edge == null || choice.stands(edge, part))) {
        boolean fits = choice.misfit(wire, part).isEmpty();
        enough = enough == null || fits ? part : enough;
        if (fits) {
          break;
        }
      }
    }
    if (enough != null) {
      double stands = heat.inPlaceOf(wire, enough).map(Ampacity::amps).orElse(stress.amps());
      return "make "
          + wire.id()
          + " of "
          + enough.id()
          + ", which stands "
          + Figures.amps(Figures.cutOff(stands))
          + " there"
          + choice.costs(wire, enough);
    }
    for (double size : SIZES) {
      WirePart part = bare(size, heat.forms().part(wire));
      if (size > least && passes(wire, part, stress).isPresent()) {
        return "make "
            + wire.id()
            + " at least "
            + Figures.shown(size)
            + " mm2"
            + (stocked.isEmpty() && facts.harness().parts().wires().isEmpty()
                ? ""
                : "; no stocked wire part is enough");
      }
    }
    return "feed what hangs on " + wire.id() + " by several wires, each with a fuse of its own";
  }

  private Optional<Ampacity> passes(Wire wire, WirePart part, Stress stress) {
    WireForm form = WireForms.of(part).orElse(null);
    return heat.inPlaceOf(wire, part)
        .filter(ampacity -> ampacity.amps() >= stress.amps())
        .filter(
            ampacity -> form != null && !Overload.of(heat, wire, part, stress).tooHot(form.maxC()));
  }

  private static WirePart bare(double areaMm2, @Nullable WirePart like) {
    Double maxC = like == null || like.maxC() == null ? Double.valueOf(100) : like.maxC();
    WirePart.Wall wall = like == null ? WirePart.Wall.THIN : like.wall();
    return new WirePart("", areaMm2, null, maxC, wall, null, null, null, null, null, null, true);
  }

  private static double area(@Nullable WirePart part, Wire wire) {
    Double area = part == null ? wire.areaMm2() : part.areaMm2();
    String awg = part == null ? wire.awg() : part.awg();
    if (area != null) {
      return area;
    }
    return awg == null ? 0 : AwgTable.areaMm2(awg).map(Cited::value).orElse(0.0);
  }

  private Optional<String> lesser(Wire wire, Edge.OfElement fuse) {
    Ampacity ampacity = heat.of(wire).orElse(null);
    WireForm form = heat.forms().of(wire).orElse(null);
    boolean place = fuse.element() instanceof Element.Fuse;
    if (ampacity == null || form == null || !place) {
      return Optional.empty();
    }
    String style = ratings.style(fuse).orElse("");
    TreeSet<Double> made = new TreeSet<>(FuseRatingTable.ratings(style));
    for (FusePart part : facts.harness().parts().fuses().values()) {
      if (part.ratingA() != null && style.equals(part.style())) {
        made.add(part.ratingA());
      }
    }
    double carries = LastingAmps.of(facts, fuse).map(LastingAmps::amps).orElse(0.0);
    for (double rating : made.descendingSet()) {
      if (rating <= ampacity.amps()
          && carries <= LOADED * rating
          && !Overload.of(heat, wire, null, Stress.ofFuse(rating, fuse)).tooHot(form.maxC())) {
        boolean trip = ((Element.Fuse) fuse.element()).electronic();
        return Optional.of(
            (trip ? "let " + fuse.text() + " trip at " : "fit ")
                + Figures.amps(rating)
                + (trip ? "" : " at most in " + fuse.text())
                + (carries > 0
                    ? ", which carries " + Figures.amps(carries) + " at most"
                    : ", if its loads allow that"));
      }
    }
    return Optional.empty();
  }
}
