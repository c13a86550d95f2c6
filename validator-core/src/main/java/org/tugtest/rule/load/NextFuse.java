package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.heat.Ampacity;
import org.tugtest.model.FusePart;
import org.tugtest.network.Edge;
import org.tugtest.protect.Exposure;
import org.tugtest.table.FuseRatingTable;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** The next rating for a fuse that carries too much of its own, and what stands against it. */
final class NextFuse {
  private static final int NAMED = 3;
  private static final String SHARE = "give some of its loads another way";
  private final Facts facts;
  private final Map<Edge, List<Exposure>> behind = new HashMap<>();
  private boolean looked;

  NextFuse(Facts facts) {
    this.facts = facts;
  }

  /**
   * A remedy with figures.
   *
   * @param rating of the fuse, in amperes
   * @param least the least rating at which it is loaded no more than it may be
   */
  String remedy(Edge.OfElement fuse, double rating, double least) {
    String style = facts.protection().ratings().style(fuse).orElse("");
    TreeSet<Double> made = new TreeSet<>(FuseRatingTable.ratings(style));
    for (FusePart part : facts.harness().parts().fuses().values()) {
      if (part.ratingA() != null && style.equals(part.style())) {
        made.add(part.ratingA());
      }
    }
    Double next = made.ceiling(least);
    if (next == null) {
      return SHARE + ": no " + (style.isEmpty() ? "" : style + " ") + "fuse is made for so much";
    }
    List<String> thin = new ArrayList<>();
    List<String> unsized = new ArrayList<>();
    for (Exposure exposure : behind(fuse)) {
      double amps = exposure.leastA() - rating + next;
      Ampacity stands = facts.ampacity().of(exposure.wire().wire()).orElse(null);
      if (stands == null) {
        unsized.add(exposure.wire().text());
      } else if (stands.amps() < amps) {
        thin.add(exposure.wire().text());
      }
    }
    String figure = String.format(Locale.ROOT, "%s A", Quoted.number(next));
    if (!thin.isEmpty()) {
      return SHARE
          + "; "
          + figure
          + " would do for the fuse, but is more than "
          + Series.and(thin, NAMED)
          + (thin.size() == 1 ? " stands" : " stand");
    }
    return "fit "
        + figure
        + (unsized.isEmpty()
            ? ", which the wires it protects stand"
            : " if " + Series.and(unsized, NAMED) + ", whose size is not known, can stand that")
        + ", or "
        + SHARE;
  }

  /** The wires of the feed side whose lasting current a fuse bounds. */
  private List<Exposure> behind(Edge.OfElement fuse) {
    if (!looked) {
      for (Exposure exposure : facts.protection().exposures()) {
        exposure
            .cut()
            .forEach(each -> behind.computeIfAbsent(each, none -> new ArrayList<>()).add(exposure));
      }
      looked = true;
    }
    return behind.getOrDefault(fuse, List.of());
  }
}
