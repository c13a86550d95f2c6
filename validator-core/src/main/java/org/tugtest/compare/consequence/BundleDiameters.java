package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.match.Match;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.route.Bundle;

/** How thick the thickest part of each segment is expected to be. */
public final class BundleDiameters implements Consequence {
  @Override
  public String title() {
    return "bundle diameters of the segments";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    List<Moved> moved = new ArrayList<>();
    for (Match match : comparison.matches().in("segments")) {
      Double was = diameter(comparison.before().facts(), match.before());
      Double is = diameter(comparison.after().facts(), match.after());
      if (was != null && is != null) {
        Moved.of(match.after(), Subject.of("segments", match.after()), was, is, "mm", 1)
            .ifPresent(moved::add);
      }
    }
    return Moved.sorted(moved);
  }

  private static @Nullable Double diameter(Facts facts, String segment) {
    return facts.bundles().thickest(segment).map(Bundle::expectedMm).orElse(null);
  }
}
