package org.tugtest.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.tugtest.finding.Basis;

/**
 * What one wire stands beside neighbours at their solved currents. A piece that cannot be the one
 * in which it stands least is passed over with one look.
 */
final class LoadedAmps {
  /** Over so many hot wires nothing is published. */
  private static final double MOST_COUNTED = 20;

  private static final double CLOSE = 1 - 1e-9;
  private final Beside beside;
  private final ChartAmps chart;
  private final WireForm form;
  private final double most;
  private final String changed;
  private double least = Double.POSITIVE_INFINITY;
  private double leastSure = Double.POSITIVE_INFINITY;

  /**
   * What a wire stands.
   *
   * @param most what its maker allows
   * @param changed the wire when it is of another form than in the sections; empty: as it is there
   */
  LoadedAmps(Beside beside, ChartAmps chart, WireForm form, double most, String changed) {
    this.beside = beside;
    this.chart = chart;
    this.form = form;
    this.most = most;
    this.changed = changed;
  }

  /** Adds what it stands on stretches, but for those on which it surely stands more. */
  void add(List<LoomSections.Stretch> stretches, List<Standing> pieces) {
    for (LoomSections.Stretch stretch : stretches) {
      Section section = beside.sections().at(stretch);
      int neighbours = section.conductors().size() + section.unsized().size() - 1;
      List<Beside.Loaded> loaded = beside.loaded(stretch.section());
      boolean alone = neighbours == 0 && !section.enclosed();
      boolean known = neighbours == 0 || beside.knows(stretch.section());
      if (alone || !known || loaded.isEmpty()) {
        Around around = new Around(section.ambientC(), neighbours, section.enclosed());
        Standing standing = chart.at(form, most, around);
        pieces.add(standing);
        least = Math.min(least, standing.ampacity().amps());
        leastSure = Math.min(leastSure, standing.ampacity().sureAmps());
      }
      if (!alone) {
        loaded.forEach(each -> add(stretch, each, pieces));
      }
    }
  }

  private void add(LoomSections.Stretch stretch, Beside.Loaded given, List<Standing> pieces) {
    Beside.Loaded loaded = changed.isEmpty() ? given : given.with(changed, form, beside.freeAir());
    Section section = loaded.section();
    String wire = section.conductors().get(stretch.place()).wire();
    List<Integer> places = places(section, wire);
    double air = section.ambientC().value();
    double free = chart.alone(form, air);
    double cap = Math.min(free, most);
    int place = places.get(0);
    boolean once = places.size() == 1;
    double high = Math.min(Math.min(cap, least), loaded.bundle().aloneAmps(place));
    boolean enough = once && loaded.bundle().allows(place, high);
    ShrunkBundle without =
        once ? loaded.bundle() : loaded.with(places, 0, section.envelope(), beside.freeAir());
    if (!enough && !without.allows(place, 0)) {
      int neighbours = section.conductors().size() - 1;
      pieces.add(
          chart.at(
              form,
              most,
              new Around(
                  section.ambientC(), neighbours, section.enclosed(), Around.Loading.TOO_MUCH)));
      Ampacity its = pieces.get(pieces.size() - 1).ampacity();
      least = Math.min(least, its.amps());
      leastSure = Math.min(leastSure, its.sureAmps());
      return;
    }
    boolean many = loaded.bundle().counted() > MOST_COUNTED;
    double amps = enough ? high : allowed(loaded, places, section.envelope(), high);
    double sure =
        many
            ? Math.min(cap, leastSure)
            : section.enclosed()
                ? allowed(loaded, places, Envelope.BARE, Math.min(cap, leastSure))
                : amps;
    if (pieces.isEmpty() || amps < CLOSE * least || sure < CLOSE * leastSure) {
      pieces.add(standing(loaded, places, amps, sure, free, many));
      least = Math.min(least, amps);
      leastSure = Math.min(leastSure, sure);
    }
  }

  private static List<Integer> places(Section section, String wire) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < section.conductors().size(); i++) {
      if (section.conductors().get(i).wire().equals(wire)) {
        places.add(i);
      }
    }
    return places;
  }

  /** What it may carry, but no more than is of interest. */
  private double allowed(
      Beside.Loaded loaded, List<Integer> places, Envelope around, double atMost) {
    ShrunkBundle bundle = around.equals(Envelope.BARE) ? loaded.bare() : loaded.bundle();
    int place = places.get(0);
    double high = Math.min(atMost, bundle.aloneAmps(place));
    if (places.size() == 1 && bundle.allows(place, high)) {
      return high;
    }
    DoubleUnaryOperator over =
        places.size() == 1
            ? amps -> -bundle.left(place, amps)
            : amps -> -loaded.with(places, amps, around, beside.freeAir()).left(place, amps);
    return Root.last(over, 0, high);
  }

  private Standing standing(
      Beside.Loaded loaded,
      List<Integer> places,
      double amps,
      double sure,
      double free,
      boolean many) {
    Section section = loaded.section();
    double limit = loaded.bundle().limitC();
    int neighbours = section.conductors().size() - 1;
    Around.Loading loading = new Around.Loading(loaded.state(), limit < form.maxC() ? limit : 0);
    Around around = new Around(section.ambientC(), neighbours, section.enclosed(), loading);
    Basis basis = form.basis().weaker(section.ambientC().basis()).weaker(Basis.DERIVED);
    boolean byMaker = amps == most;
    boolean unsure = many || (section.enclosed() && amps < CLOSE * sure);
    Ampacity ampacity =
        new Ampacity(
            amps,
            byMaker ? Basis.GIVEN : unsure ? basis.weaker(Basis.MEMORY) : basis,
            sure,
            sure == most ? Basis.GIVEN : basis,
            free,
            around,
            byMaker);
    double thermal = byMaker ? allowed(loaded, places, section.envelope(), free) : amps;
    double factor = free > 0 ? Math.min(1, thermal / free) : 0;
    return new Standing(
        ampacity,
        temperature(loaded.currents(), List.copyOf(places), limit, beside.freeAir()),
        ChartAmps.alone(form.insulated(), section.ambientC().value()).atFactor(factor));
  }

  /** What it comes to there; over the bundle's lowest class just where it is not allowed. */
  private static DoubleFunction<OptionalDouble> temperature(
      Beside.Currents currents, List<Integer> places, double limit, FreeAirAmps freeAir) {
    return amps -> {
      ShrunkBundle bundle = currents.with(places, amps, currents.section().envelope(), freeAir);
      BundleHeat heat = bundle.heat();
      if (!heat.steady()) {
        return OptionalDouble.empty();
      }
      double own = heat.celsius().get(places.get(0));
      return OptionalDouble.of(
          bundle.allows(places.get(0), amps) ? Math.min(own, limit) : Math.max(own, limit));
    };
  }
}
