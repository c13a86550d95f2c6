package org.tugtest.compare.change;

import java.util.Comparator;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.match.Matches;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;

/** What each change is reported under. */
final class Grouping {
  private static final Group LOOSE = new Group(Group.Sort.WIRES, "");
  private final Facts before;
  private final Facts after;
  private final Matches matches;
  private final Set<String> splices = new HashSet<>();

  Grouping(Facts before, Facts after, Matches matches) {
    this.before = before;
    this.after = after;
    this.matches = matches;
    before.wiring().splices().forEach(id -> splices.add(afterId(id)));
    splices.addAll(after.wiring().splices());
  }

  Group of(ChangeList.Entry entry) {
    String id = entry.is() != null ? entry.is() : Objects.requireNonNull(entry.was());
    return switch (entry.section()) {
      case "connectors" -> new Group(Group.Sort.CONNECTOR, id);
      case "devices" -> new Group(Group.Sort.DEVICE, id);
      case "fitted" -> new Group(Group.Sort.DEVICE, owner(id));
      case "splices" -> new Group(Group.Sort.SPLICE, id);
      case "wires" -> ofWire(entry);
      case "groups" -> LOOSE;
      case "nodes", "segments", "zones", "looms" -> new Group(Group.Sort.BODY, entry.section());
      case "harness", "defaults" -> new Group(Group.Sort.HARNESS, entry.section());
      case "states", "limits", "waivers", "expectations" -> Group.POLICY;
      default -> new Group(Group.Sort.PARTS, entry.section());
    };
  }

  /** A wire end that moved: the connector it sits in now, else the one it sat in. */
  Group ofEnd(@Nullable Ref was, @Nullable Ref is) {
    return best(is == null ? null : is.owner(), was == null ? null : afterId(was.owner()));
  }

  private Group ofWire(ChangeList.Entry entry) {
    Wire wire =
        entry.is() != null
            ? after.harness().wires().get(entry.is())
            : before.harness().wires().get(Objects.requireNonNull(entry.was()));
    if (wire == null) {
      return LOOSE;
    }
    return entry.is() != null
        ? best(id(wire.from()), id(wire.to()))
        : best(afterId(id(wire.from())), afterId(id(wire.to())));
  }

  /** A connector before a device before a splice, the first of two. */
  private Group best(@Nullable String one, @Nullable String other) {
    return Stream.of(one == null ? "" : one, other == null ? "" : other)
        .filter(id -> !id.isEmpty())
        .map(this::ofOwner)
        .min(Comparator.comparing(Group::sort))
        .orElse(LOOSE);
  }

  private static String id(@Nullable Ref end) {
    return end == null ? "" : end.owner();
  }

  private String afterId(String id) {
    return matches
        .ofBefore("connectors", id)
        .or(() -> matches.ofBefore("splices", id))
        .map(match -> match.after())
        .orElse(id);
  }

  private Group ofOwner(String id) {
    if (after.harness().devices().containsKey(id) || before.harness().devices().containsKey(id)) {
      return new Group(Group.Sort.DEVICE, id);
    }
    return new Group(splices.contains(id) ? Group.Sort.SPLICE : Group.Sort.CONNECTOR, id);
  }

  private static String owner(String element) {
    int dot = element.indexOf('.');
    return dot < 0 ? element : element.substring(0, dot);
  }
}
