package org.tugtest.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A connector body with its cavities.
 *
 * @param side null only when the file does not say it rightly
 * @param rows cavity names by row, seen from the wire side, latch up; {@code ""} is a gap
 * @param cavityFamilies the family of a cavity where it differs from {@code family}
 * @param matesWith housing ids; one side is enough
 * @param terminals usual terminals, in order of choice
 * @param seals usual seals, in order of choice
 */
public record Housing(
    String id,
    @Nullable ContactSide side,
    List<List<String>> rows,
    @Nullable String family,
    Map<String, String> cavityFamilies,
    boolean sealed,
    @Nullable String keying,
    List<String> matesWith,
    List<String> terminals,
    List<String> seals,
    boolean secondaryLock,
    @Nullable Double maxC,
    @Nullable Double grams) {

  public Housing {
    rows = rows.stream().map(List::copyOf).toList();
    cavityFamilies = Ordered.copyOf(cavityFamilies);
    matesWith = List.copyOf(matesWith);
    terminals = List.copyOf(terminals);
    seals = List.copyOf(seals);
  }

  /** The names of its cavities, row by row, gaps left out. */
  public List<String> cavityNames() {
    return rows.stream().flatMap(List::stream).filter(name -> !name.isEmpty()).toList();
  }

  /** Whether it has a cavity of that name. */
  public boolean hasCavity(String name) {
    return !name.isEmpty() && rows.stream().anyMatch(row -> row.contains(name));
  }

  /** The family of a cavity; null when neither it nor the housing gives one. */
  public @Nullable String familyOf(String cavity) {
    return cavityFamilies.getOrDefault(cavity, family);
  }
}
