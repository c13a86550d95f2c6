package org.tugtest.compare.match;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Renames;
import org.tugtest.facts.Facts;

/**
 * Connectors and splices: first those whose id stands with something in or at them, then those that
 * hold the same wires or sit in the same port, then those that are alike with all around them, then
 * what is only called the same, then what is nearest.
 */
final class OwnerMatcher {
  private final Map<String, Owner> before;
  private final Map<String, Owner> after;
  private final SectionMatch connectors;
  private final SectionMatch splices;

  OwnerMatcher(
      Facts before, Facts after, Renames parts, SectionMatch connectors, SectionMatch splices) {
    this.before = Owner.all(before, parts);
    this.after = Owner.all(after, Renames.NONE);
    this.connectors = connectors;
    this.splices = splices;
  }

  void match() {
    byIdWithSomethingIn();
    byWireIds();
    if (hasFree()) {
      new Likeness(before, after, this::afterOf, this::take).match();
    }
    byIdAlone();
    if (hasFree()) {
      byContents();
    }
  }

  private boolean hasFree() {
    return (!connectors.freeBefore().isEmpty() && !connectors.freeAfter().isEmpty())
        || (!splices.freeBefore().isEmpty() && !splices.freeAfter().isEmpty());
  }

  private SectionMatch of(Owner owner) {
    return owner.splice() ? splices : connectors;
  }

  /** What a thing of before is called after, as far as is known yet; null when it is not. */
  private @Nullable String afterOf(String id) {
    Owner owner = before.get(id);
    return owner == null ? id : of(owner).ofBefore(id).map(Match::after).orElse(null);
  }

  private boolean take(Owner one, Owner other, String why) {
    boolean free = one.splice() == other.splice() && of(one).isFree(one.id(), other.id());
    if (free) {
      of(one).match(one.id(), other.id(), why);
    }
    return free;
  }

  private void byIdWithSomethingIn() {
    for (Owner one : before.values()) {
      Owner other = after.get(one.id());
      if (other == null || one.splice() != other.splice()) {
        continue;
      }
      if (one.implied() && other.implied()) {
        take(one, other, "same id");
      } else if (one.port() != null && one.port().equals(other.port())) {
        take(one, other, "same id, in the same port");
      } else if (sharesWire(one, other)) {
        take(one, other, "same id, with the same wires");
      } else if (one.mate() != null && one.mate().equals(other.mate())) {
        take(one, other, "same id, on the same mate");
      } else if (one.sameSort(other) && (one.contacts().isEmpty() || other.contacts().isEmpty())) {
        take(one, other, "same id, and nothing in it that tells otherwise");
      }
    }
  }

  private static boolean sharesWire(Owner one, Owner other) {
    Map<String, List<Owner.Contact>> ids = new HashMap<>();
    for (Owner.Contact contact : one.contacts()) {
      ids.computeIfAbsent(contact.wire().id(), none -> new ArrayList<>()).add(contact);
    }
    return other.contacts().stream()
        .anyMatch(
            contact ->
                ids.getOrDefault(contact.wire().id(), List.of()).stream()
                    .anyMatch(old -> old.speaksFor(contact) || sameCavity(old, contact)));
  }

  private static boolean sameCavity(Owner.Contact one, Owner.Contact other) {
    return !one.cavity().isEmpty() && one.cavity().equals(other.cavity());
  }

  private void byWireIds() {
    Votes votes = new Votes("holds the same wires");
    Map<String, String> afterAtPort = new HashMap<>();
    Map<String, Map<Owner.Contact, String>> afterOfWire = new HashMap<>();
    for (Owner other : after.values()) {
      if (of(other).isFreeAfter(other.id())) {
        for (Owner.Contact contact : other.contacts()) {
          afterOfWire
              .computeIfAbsent(contact.wire().id(), none -> new LinkedHashMap<>())
              .put(contact, other.id());
        }
        if (other.port() != null) {
          afterAtPort.put(other.port(), other.id());
        }
      }
    }
    for (Owner one : before.values()) {
      if (of(one).isFreeBefore(one.id()) && !one.implied()) {
        if (one.port() != null) {
          votes.add(one.id(), afterAtPort.get(one.port()));
        }
        for (Owner.Contact contact : one.contacts()) {
          afterOfWire
              .getOrDefault(contact.wire().id(), Map.of())
              .forEach(
                  (end, other) -> {
                    if (contact.speaksFor(end)) {
                      votes.add(one.id(), other);
                    }
                  });
        }
      }
    }
    for (Map.Entry<Votes.Pair, Integer> entry : votes.ranked()) {
      Owner one = Objects.requireNonNull(before.get(entry.getKey().before()));
      Owner other = Objects.requireNonNull(after.get(entry.getKey().after()));
      boolean samePort = one.port() != null && one.port().equals(other.port());
      int most = most(one, other);
      int same = entry.getValue() - (samePort ? 1 : 0);
      if (one.sameSort(other) && (samePort || 2 * same >= most)) {
        take(one, other, samePort ? "in the same port" : "holds the same wires");
      }
    }
  }

  private void byIdAlone() {
    for (SectionMatch section : List.of(connectors, splices)) {
      for (String id : section.freeOnBoth()) {
        Owner one = Objects.requireNonNull(before.get(id));
        Owner other = Objects.requireNonNull(after.get(id));
        if (Objects.equals(one.part(), other.part())) {
          take(one, other, one.splice() ? "same id" : "same id and housing");
        } else if (2 * common(one, other) >= most(one, other)) {
          take(one, other, "same id with most of the contents");
        }
      }
    }
  }

  private void byContents() {
    Assignment assignment = new Assignment();
    Contents contents = new Contents();
    Map<String, List<Owner>> alike = new HashMap<>();
    Map<String, int[]> keysOf = new HashMap<>();
    for (Owner other : after.values()) {
      if (of(other).isFreeAfter(other.id()) && !other.implied()) {
        alike.computeIfAbsent(sort(other), none -> new ArrayList<>()).add(other);
        keysOf.put(other.id(), contents.of(keysAfter(other)));
      }
    }
    Map<String, Owner> free = new HashMap<>();
    for (Owner one : before.values()) {
      if (of(one).isFreeBefore(one.id()) && !one.implied()) {
        free.put(one.id(), one);
        int[] keys = contents.of(keysBefore(one));
        for (Owner other : alike.getOrDefault(sort(one), List.of())) {
          int most = most(one, other);
          int fewest = Math.min(one.contacts().size(), other.contacts().size());
          if (most > 0 && 2 * fewest >= most) {
            int same = Contents.common(keys, Objects.requireNonNull(keysOf.get(other.id())));
            if (2 * same >= most) {
              assignment.candidate(one.id(), other.id(), most - same);
            }
          }
        }
      }
    }
    assignment.solve(
        (id, other) ->
            take(
                Objects.requireNonNull(free.get(id)),
                Objects.requireNonNull(after.get(other)),
                "the same housing with most of the contents"));
  }

  /** Owners are compared with those of their sort and of a near count of contacts alone. */
  private static String sort(Owner owner) {
    return owner.splice() + "|" + owner.part();
  }

  private static int most(Owner one, Owner other) {
    return Math.max(one.contacts().size(), other.contacts().size());
  }

  private int common(Owner one, Owner other) {
    Contents contents = new Contents();
    return Contents.common(contents.of(keysBefore(one)), contents.of(keysAfter(other)));
  }

  private List<String> keysBefore(Owner one) {
    return one.contacts().stream()
        .map(contact -> key(contact, afterOf(contact.farOwner()), one.splice()))
        .toList();
  }

  private List<String> keysAfter(Owner other) {
    return other.contacts().stream()
        .map(contact -> key(contact, knownAfter(contact.farOwner()), other.splice()))
        .toList();
  }

  private @Nullable String knownAfter(String id) {
    Owner owner = after.get(id);
    return owner == null || !of(owner).isFreeAfter(id) ? id : null;
  }

  /** A contact of a connector is known by its cavity, one of a splice by where its wire goes. */
  private static String key(Owner.Contact contact, @Nullable String far, boolean splice) {
    String to = splice && far != null ? far + ":" + contact.farPin() : "";
    return contact.cavity() + "|" + contact.label() + "|" + to;
  }
}
