package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.compare.Comparison;
import org.tugtest.facts.Facts;
import org.tugtest.operate.OperatingPoint;

/**
 * Of each net that stayed the device pin, and the state of both revisions, whose volts against the
 * minus of the first source moved most.
 */
public final class NetVolts implements Consequence {
  /** Pins of one net that are looked at. */
  private static final int MOST_PINS = 50;

  @Override
  public String title() {
    return "volts within the nets that stayed";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    Facts before = comparison.before().facts();
    Facts after = comparison.after().facts();
    List<Moved> moved = new ArrayList<>();
    Map<OperatingPoint, OperatingPoint> states = new LinkedHashMap<>();
    for (OperatingPoint was : before.operating().all()) {
      after
          .operating()
          .in(comparison.matches().renames().id("states", was.state()))
          .ifPresent(is -> states.put(was, is));
    }
    for (List<StayedNets.Pin> net : new StayedNets(comparison).all()) {
      Moved worst = null;
      for (StayedNets.Pin pin : net.subList(0, Math.min(net.size(), MOST_PINS))) {
        for (Map.Entry<OperatingPoint, OperatingPoint> state : states.entrySet()) {
          Moved one =
              Moved.of(
                      pin.after().text() + " in " + state.getValue().state(),
                      pin.after().subject(),
                      state.getKey().volts(pin.before()).orElse(0),
                      state.getValue().volts(pin.after()).orElse(0),
                      "V",
                      2)
                  .orElse(null);
          if (one != null && (worst == null || Moved.LARGEST_FIRST.compare(one, worst) < 0)) {
            worst = one;
          }
        }
      }
      if (worst != null) {
        moved.add(worst);
      }
    }
    return Moved.sorted(moved);
  }
}
