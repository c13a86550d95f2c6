package org.tugtest.compare.match;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Renames;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;

/**
 * Wires: first those whose id stands with an end that stays, then those with the same ends and
 * looks whatever their id, then those of which at least the part goes with the id, then the
 * nearest.
 */
final class WireMatcher {
  /** Most wires alike in one way that are tried against each other. */
  private static final int MOST_ALIKE = 40;

  /** Most wires on a contact that still tells which wire it is. */
  private static final int FEW = 2;

  private final Map<String, Wire> before;
  private final Map<String, Wire> after;
  private final Renames names;
  private final SectionMatch section;
  private final Map<String, Integer> occupied = new HashMap<>();

  WireMatcher(Harness before, Harness after, Renames names, SectionMatch section) {
    this.before = before.wires();
    this.after = after.wires();
    this.names = names;
    this.section = section;
  }

  void match() {
    for (String id : section.freeOnBoth()) {
      if (endsBefore(id).staying(endsAfter(id)) > 0) {
        section.match(id, id, "same id, with an end that stays");
      }
    }
    alike("same ends, part and colour", this::looksBefore, this::looksAfter);
    alike(
        "same ends and part",
        id -> gauge(wireBefore(id), endsBefore(id), names),
        id -> gauge(wireAfter(id), endsAfter(id), Renames.NONE));
    alike(
        "same ends and colour",
        id -> colour(wireBefore(id), endsBefore(id)),
        id -> colour(wireAfter(id), endsAfter(id)));
    for (String id : section.freeOnBoth()) {
      Wire one = wireBefore(id);
      Wire other = wireAfter(id);
      if (WireLabel.hasGauge(one)
          && WireLabel.gauge(one, names).equals(WireLabel.gauge(other, Renames.NONE))) {
        section.match(id, id, "same id and part");
      }
    }
    nearest();
  }

  private Wire wireBefore(String id) {
    return Objects.requireNonNull(before.get(id));
  }

  private Wire wireAfter(String id) {
    return Objects.requireNonNull(after.get(id));
  }

  private WireEnds endsBefore(String id) {
    return WireEnds.of(wireBefore(id), names);
  }

  private WireEnds endsAfter(String id) {
    return WireEnds.of(wireAfter(id), Renames.NONE);
  }

  private String looksBefore(String id) {
    return endsBefore(id).key() + "|" + WireLabel.of(wireBefore(id), names);
  }

  private String looksAfter(String id) {
    return endsAfter(id).key() + "|" + WireLabel.of(wireAfter(id), Renames.NONE);
  }

  private static String gauge(Wire wire, WireEnds ends, Renames names) {
    return WireLabel.hasGauge(wire) ? ends.key() + "|" + WireLabel.gauge(wire, names) : "";
  }

  private static String colour(Wire wire, WireEnds ends) {
    return wire.colour() == null ? "" : ends.key() + "|" + wire.colour();
  }

  /** Of several with one key, in natural order; wires without any end are like nothing. */
  private void alike(String why, Function<String, String> keyBefore, Function<String, String> key) {
    Map<String, List<String>> byKey = byKey(section.freeBefore(), keyBefore);
    for (String id : section.freeAfter()) {
      String its = key.apply(id);
      List<String> same = byKey.get(its);
      if (same != null && !same.isEmpty() && !its.isEmpty() && !endsAfter(id).key().isBlank()) {
        section.match(same.remove(0), id, why);
      }
    }
  }

  private static Map<String, List<String>> byKey(List<String> ids, Function<String, String> key) {
    Map<String, List<String>> byKey = new HashMap<>();
    for (String id : ids) {
      byKey.computeIfAbsent(key.apply(id), none -> new ArrayList<>()).add(id);
    }
    return byKey;
  }

  private void nearest() {
    List<String> befores = section.freeBefore();
    List<String> afters = section.freeAfter();
    if (befores.isEmpty() || afters.isEmpty()) {
      return;
    }
    for (Wire wire : after.values()) {
      occupied.merge(WireEnds.text(wire.from()), 1, Integer::sum);
      occupied.merge(WireEnds.text(wire.to()), 1, Integer::sum);
    }
    Assignment assignment = new Assignment();
    candidates(assignment, befores, afters, ends -> WireEnds.text(ends.from()), true);
    candidates(assignment, befores, afters, ends -> WireEnds.text(ends.to()), true);
    candidates(assignment, befores, afters, WireEnds::owners, false);
    assignment.solve((one, other) -> section.match(one, other, "nearest by ends, part and colour"));
  }

  /** Each wire with those that share what {@code of} says of their ends. */
  private void candidates(
      Assignment assignment,
      List<String> befores,
      List<String> afters,
      Function<WireEnds, String> of,
      boolean eitherEnd) {
    Map<String, List<String>> byKey = byKey(afters, id -> of.apply(endsAfter(id)));
    if (eitherEnd) {
      for (String id : afters) {
        WireEnds ends = endsAfter(id);
        String turned = of.apply(new WireEnds(ends.to(), ends.from()));
        List<String> same = byKey.computeIfAbsent(turned, none -> new ArrayList<>());
        if (!same.contains(id)) {
          same.add(id);
        }
      }
    }
    for (String id : befores) {
      String key = of.apply(endsBefore(id));
      List<String> same = byKey.getOrDefault(key, Collections.emptyList());
      if (!key.isBlank() && same.size() <= MOST_ALIKE) {
        same.forEach(other -> candidate(assignment, id, other));
      }
    }
  }

  private void candidate(Assignment assignment, String id, String otherId) {
    Wire one = wireBefore(id);
    Wire other = wireAfter(otherId);
    WireEnds ends = endsBefore(id);
    WireEnds others = endsAfter(otherId);
    boolean samePart = WireLabel.gauge(one, names).equals(WireLabel.gauge(other, Renames.NONE));
    boolean sameColour = Objects.equals(one.colour(), other.colour());
    double circuits = differs(one.circuit(), other.circuit());
    boolean looks = (samePart && sameColour) || (one.circuit() != null && circuits == 0);
    boolean near = staysOnOwnContact(ends, others) || ends.stayingNear(others) == 2;
    if (near && looks && circuits < 1) {
      assignment.candidate(
          id,
          otherId,
          4.0
              - ends.staying(others)
              - ends.stayingNear(others)
              + (samePart ? 0 : 1)
              + (sameColour ? 0 : 1)
              + circuits);
    }
  }

  /** A contact with few wires says much of a wire; a splice or a stud with many says little. */
  private boolean staysOnOwnContact(WireEnds ends, WireEnds others) {
    return isOwn(ends.from(), others) || isOwn(ends.to(), others);
  }

  private boolean isOwn(@Nullable Ref end, WireEnds others) {
    return end != null
        && end.pin() != null
        && (end.equals(others.from()) || end.equals(others.to()))
        && occupied.getOrDefault(end.text(), 0) <= FEW;
  }

  private static double differs(@Nullable String one, @Nullable String other) {
    if (one == null || other == null) {
      return one == null && other == null ? 0 : 0.5;
    }
    return one.equalsIgnoreCase(other) ? 0 : 1;
  }
}
