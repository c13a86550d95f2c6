package org.tugtest.compare.cause;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.change.Change;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Net;
import org.tugtest.network.Point;

/** The spots of a harness that something touches, the narrowest sort first: where changes meet. */
final class Spots {
  /** Sorts of spots from the narrowest on. */
  private static final List<String> SORTS =
      List.of(
          "cavity ",
          "pin ",
          "splice ",
          "wire ",
          "fuse ",
          "connector ",
          "device ",
          "net of ",
          "bundle ",
          "part ",
          "");

  private final Facts facts;

  /** The spots of one harness, the merge. */
  Spots(Facts facts) {
    this.facts = facts;
  }

  /** Where all three meet, else where the two do; empty when that is nowhere in particular. */
  Optional<String> meeting(Collection<Change> ours, Collection<Change> theirs, Finding finding) {
    Set<String> both = of(ours);
    both.retainAll(of(theirs));
    Set<String> all = new LinkedHashSet<>(both);
    all.retainAll(of(finding));
    return narrowest(all).or(() -> narrowest(both));
  }

  private static Optional<String> narrowest(Set<String> spots) {
    for (String sort : SORTS) {
      Optional<String> found =
          spots.stream()
              .filter(spot -> spot.startsWith(sort))
              .min(org.tugtest.text.NaturalOrder.NATURAL);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private Set<String> of(Collection<Change> changes) {
    Set<String> spots = new LinkedHashSet<>();
    for (Change change : changes) {
      change.subjects().forEach(subject -> add(spots, subject));
      contact(spots, change.before());
      contact(spots, change.after());
    }
    return spots;
  }

  private Set<String> of(Finding finding) {
    Set<String> spots = new LinkedHashSet<>();
    finding.subjects().forEach(subject -> add(spots, subject));
    return spots;
  }

  private void add(Set<String> spots, Subject subject) {
    String id = subject.id();
    switch (subject.section()) {
      case "wires" -> {
        spots.add("wire " + id);
        Wire wire = facts.harness().wires().get(id);
        if (wire != null) {
          end(spots, wire.from());
          end(spots, wire.to());
          along(spots, wire);
        }
      }
      case "connectors", "devices", "splices" -> owner(spots, id);
      case "fitted" -> {
        spots.add("fuse " + id);
        owner(spots, id);
      }
      case "segments" -> spots.add("bundle " + id);
      default -> {
        if (subject.section().startsWith("parts/")) {
          spots.add("part " + id);
        }
      }
    }
  }

  private void owner(Set<String> spots, String id) {
    Ref ref = Ref.parse(id);
    if (ref.pin() != null) {
      end(spots, ref);
    } else if (facts.harness().devices().containsKey(ref.owner())) {
      spots.add("device " + ref.owner());
      if (ref.member() != null) {
        spots.add("fuse " + id);
        element(spots, ref);
      }
    } else if (facts.wiring().splices().contains(ref.owner())) {
      spots.add("splice " + ref.owner());
    } else {
      spots.add("connector " + ref.owner());
    }
  }

  /** An element touches its pins and what hangs on them. */
  private void element(Set<String> spots, Ref ref) {
    var device = facts.harness().devices().get(ref.owner());
    var type = device == null ? null : facts.harness().typeOf(device);
    var element = type == null || ref.member() == null ? null : type.elements().get(ref.member());
    if (element != null) {
      element.ends().forEach(pin -> end(spots, Ref.pin(ref.owner(), pin)));
    }
  }

  private void contact(Set<String> spots, @Nullable String text) {
    if (text != null && text.indexOf(':') > 0 && text.indexOf(' ') < 0) {
      end(spots, Ref.parse(text));
    }
  }

  private void end(Set<String> spots, @Nullable Ref ref) {
    if (ref == null) {
      return;
    }
    Point point = facts.wiring().pointOf(ref).orElse(null);
    if (point == null) {
      spots.add((ref.pin() == null ? "splice " : "cavity ") + ref.text());
      spots.add("connector " + ref.owner());
      return;
    }
    switch (point.kind()) {
      case CAVITY -> {
        spots.add("cavity " + point.text());
        spots.add("connector " + point.owner());
      }
      case PIN -> {
        spots.add("pin " + point.text());
        spots.add("device " + point.owner());
      }
      case SPLICE -> spots.add("splice " + point.text());
    }
    facts.nets().of(point).map(Net::name).ifPresent(name -> spots.add("net of " + name));
  }

  /** The fuses before a wire, and the segments it runs through. */
  private void along(Set<String> spots, Wire wire) {
    facts
        .protection()
        .exposure(wire.id())
        .ifPresent(
            exposure -> {
              for (Edge.OfElement fuse : exposure.cut()) {
                spots.add("fuse " + fuse.text());
              }
            });
    facts
        .routes()
        .of(wire.id())
        .ifPresent(
            route -> route.pieces().forEach(piece -> spots.add("bundle " + piece.segment())));
  }
}
