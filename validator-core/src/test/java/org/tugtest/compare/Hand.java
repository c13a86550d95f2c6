package org.tugtest.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.change.ChangeKind;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;

/** What the edits of one script share: the loom, what was touched, and what is said of it. */
final class Hand {
  final Loom loom;
  final Random random;
  final List<Said> said = new ArrayList<>();
  final Set<String> touched = new HashSet<>();
  private int added;

  Hand(Loom loom, Random random) {
    this.loom = loom;
    this.random = random;
  }

  /** An id that nothing has yet. */
  String fresh() {
    return "NEW" + ++added;
  }

  @Nullable String untouched(String section) {
    List<String> ids = loom.ids(section);
    ids.removeIf(touched::contains);
    return ids.isEmpty() ? null : ids.get(random.nextInt(ids.size()));
  }

  @Nullable Wire takeWire() {
    String id = untouched("wires");
    if (id == null) {
      return null;
    }
    touched.add(id);
    return loom.get("wires", id, Wire.class);
  }

  void put(
      Wire old,
      @Nullable Ref from,
      @Nullable Ref to,
      @Nullable String part,
      @Nullable String colour) {
    loom.of("wires")
        .put(
            old.id(),
            new Wire(
                old.id(),
                null,
                from,
                to,
                part,
                null,
                null,
                colour,
                null,
                old.circuit(),
                old.via(),
                old.laidInPlace(),
                old.cutMm(),
                null,
                null,
                null,
                null,
                null,
                null,
                null));
  }

  boolean isTouched(@Nullable Ref end) {
    return end != null && touched.contains(end.owner());
  }

  /** Whether a wire in it has been altered, or nothing is in it that tells it from others. */
  boolean touchesWire(String owner) {
    boolean any = false;
    for (String id : loom.ids("wires")) {
      Wire wire = loom.get("wires", id, Wire.class);
      boolean here = ends(wire.from(), owner) || ends(wire.to(), owner);
      if (here && touched.contains(id)) {
        return true;
      }
      any |= here;
    }
    return !any || said.stream().anyMatch(one -> (owner + ":").equals(prefix(one.before())));
  }

  private static String prefix(@Nullable String text) {
    int colon = text == null ? -1 : text.indexOf(':');
    return colon < 0 ? text + ":" : text.substring(0, colon + 1);
  }

  private static boolean ends(@Nullable Ref ref, String owner) {
    return ref != null && ref.owner().equals(owner);
  }

  void say(ChangeKind kind, String place, @Nullable String before, @Nullable String after) {
    said.add(new Said(kind, place, place, before, after));
  }
}
