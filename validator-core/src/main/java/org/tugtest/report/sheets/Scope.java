package org.tugtest.report.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Harness;
import org.tugtest.model.Loom;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;

/**
 * What a sheet is about: the whole harness, one of its looms, or what belongs to no loom.
 *
 * @param folder of its sheets, with {@code /} at the end; empty for the whole harness
 * @param kind which of the three
 * @param loom id of the loom; empty for the others
 * @param name as printed: {@code loom nose, revision C}; empty for the whole harness
 */
public record Scope(String folder, Kind kind, String loom, String name) {
  /** The three kinds. */
  public enum Kind {
    /** Everything. */
    WHOLE,
    /** One loom. */
    LOOM,
    /** What belongs to no loom, where there are looms. */
    LOOSE
  }

  /** The whole harness. */
  public static final Scope WHOLE = new Scope("", Kind.WHOLE, "", "");

  private static final Scope LOOSE = new Scope("loose/", Kind.LOOSE, "", "in no loom");

  /** The looms, and what is loose beside them; the whole where there is no loom. */
  public static List<Scope> parts(Harness harness) {
    if (harness.looms().isEmpty()) {
      return List.of(WHOLE);
    }
    List<Scope> scopes = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (Loom loom : harness.looms().values()) {
      String stem = "loom-" + loom.id().replaceAll("[^A-Za-z0-9_]+", "-");
      String folder = stem;
      for (int n = 2; !taken.add(folder.toLowerCase(Locale.ROOT)); n++) {
        folder = stem + "-" + n;
      }
      scopes.add(new Scope(folder + "/", Kind.LOOM, loom.id(), named(loom)));
    }
    boolean loose =
        Stream.of(
                harness.wires().values().stream().map(Wire::loom),
                harness.connectors().values().stream().map(Connector::loom),
                harness.splices().values().stream().map(Splice::loom))
            .flatMap(looms -> looms)
            .anyMatch(LOOSE::holds);
    if (loose) {
      scopes.add(LOOSE);
    }
    return List.copyOf(scopes);
  }

  private static String named(Loom loom) {
    String revision = loom.revision();
    return "loom " + loom.id() + (revision == null ? "" : ", revision " + revision);
  }

  /** Whether a thing of this loom is in it; null: of none. */
  public boolean holds(@Nullable String loomOfThing) {
    boolean none = loomOfThing == null || loomOfThing.isEmpty();
    return kind == Kind.WHOLE || (kind == Kind.LOOSE ? none : loom.equals(loomOfThing));
  }
}
