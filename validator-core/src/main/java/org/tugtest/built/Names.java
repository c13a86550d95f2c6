package org.tugtest.built;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.network.Point;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Nearest;

/** Finds what references name, and what is nearest to those that name nothing. */
final class Names {
  private static final int MOST = 3;
  private final Facts facts;

  Names(Facts facts) {
    this.facts = facts;
  }

  /** The point that a reference names; empty when there is none. */
  Optional<Point> point(Ref ref) {
    return facts.wiring().pointOf(ref).filter(point -> facts.network().index(point) >= 0);
  }

  /** What could be meant by a reference that names no point; one sentence. */
  String nearest(Ref ref) {
    List<String> near = pinsOf(ref.owner());
    if (near.isEmpty()) {
      Set<String> owners = new TreeSet<>(NaturalOrder.NATURAL);
      owners.addAll(facts.wiring().connectors());
      owners.addAll(facts.wiring().splices());
      owners.addAll(facts.harness().devices().keySet());
      List<String> alike = new ArrayList<>();
      for (String owner : Nearest.to(ref.owner(), owners)) {
        List<String> its = pinsOf(owner);
        String same = ref.pin() == null ? owner : owner + ":" + ref.pin();
        alike.add(its.isEmpty() || its.contains(same) ? same : its.get(0));
      }
      return alike.isEmpty()
          ? "no connector, device or splice is called so or nearly so"
          : question(alike);
    }
    String pin = ref.pin() == null ? "" : ref.owner() + ":" + ref.pin();
    List<String> close = Nearest.to(pin, near);
    return question(close.isEmpty() ? near.subList(0, Math.min(MOST, near.size())) : close);
  }

  private List<String> pinsOf(String owner) {
    if (facts.wiring().connectors().contains(owner)) {
      return facts.wiring().cavitiesOf(owner).stream().map(cavity -> owner + ":" + cavity).toList();
    }
    return facts.wiring().pinsOf(owner).stream().map(pin -> owner + ":" + pin).toList();
  }

  /** {@code did you mean A, B or C?}, of names that are known to be near. */
  static String question(Collection<String> names) {
    List<String> all = List.copyOf(names);
    String last = all.get(all.size() - 1);
    return all.size() == 1
        ? "did you mean " + last + "?"
        : "did you mean " + String.join(", ", all.subList(0, all.size() - 1)) + " or " + last + "?";
  }

  /** The same for an id among others; else what there is. */
  static String nearest(String id, Collection<String> known, String noun) {
    String question = Nearest.question(id, known);
    if (!question.isEmpty()) {
      return question;
    }
    return known.isEmpty()
        ? "there are no " + noun
        : "there are the " + noun + " " + org.tugtest.text.Series.and(List.copyOf(known), 2 * MOST);
  }
}
