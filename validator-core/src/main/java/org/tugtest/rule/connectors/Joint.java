package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.network.Mating;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.network.Wiring;
import org.tugtest.text.NaturalOrder;

/**
 * A mated pair between two looms of which all is known that moving its contacts needs.
 *
 * @param used the contacts with a wire on either half, in natural order of the near cavities
 * @param free the contacts without, that both halves have
 */
record Joint(Side near, Side far, List<Contact> used, List<Contact> free) {
  static final String NO_NODE = "no node says where it stands";
  static final String INCOMPLETE = "a wired cavity of it has no counterpart";

  /** One half: where it stands decides with which halves it can be merged. */
  record Side(String connector, Housing housing, LoomKey loom, String node) {
    Point at(String cavity) {
      return Point.cavity(connector, cavity);
    }

    Subject subject() {
      return Subject.connector(connector);
    }

    /** The loom and the node in one text. */
    String stand() {
      return node + "|" + loom.loom();
    }
  }

  /** Two cavities that meet. */
  record Contact(String near, String far) {
    static final Comparator<Contact> IN_ORDER =
        Comparator.comparing(Contact::near, NaturalOrder.NATURAL);

    Contact turned() {
      return new Contact(/* near= */ far, /* far= */ near);
    }
  }

  /** Either a joint or why there is none. */
  record Looked(Optional<Joint> joint, String why) {}

  static Looked at(Facts facts, MatedPair pair, String other) {
    Wiring wiring = facts.wiring();
    Mating mating = wiring.mating();
    Housing own = mating.housingOf(pair.connector()).orElse(null);
    Housing met = mating.housingOf(other).orElse(null);
    String here = mating.nodeOf(pair.connector()).orElse(null);
    String there = mating.nodeOf(other).orElse(null);
    if (own == null || met == null) {
      return new Looked(Optional.empty(), Unjudged.HOUSING);
    }
    if (here == null || there == null) {
      return new Looked(Optional.empty(), NO_NODE);
    }
    if (pair.mapped(facts.harness())) {
      return new Looked(Optional.empty(), Unjudged.ADAPTOR);
    }
    Side near = new Side(pair.connector(), own, loom(facts, pair.connector()), here);
    Side far = new Side(other, met, loom(facts, other), there);
    List<Contact> used = new ArrayList<>();
    List<Contact> free = new ArrayList<>();
    boolean complete = met.cavityNames().stream().noneMatch(name -> isLost(wiring, far.at(name)));
    for (String name : own.cavityNames()) {
      Point across = wiring.meets(near.at(name)).orElse(null);
      List<WireEnd> ends = wiring.endsAt(near.at(name));
      if (across != null) {
        boolean wired = !ends.isEmpty() || !wiring.endsAt(across).isEmpty();
        (wired ? used : free).add(new Contact(name, across.name()));
      }
      complete &= across != null || ends.isEmpty();
    }
    used.sort(Contact.IN_ORDER);
    free.sort(Contact.IN_ORDER);
    return complete
        ? new Looked(Optional.of(new Joint(near, far, used, free)), "")
        : new Looked(Optional.empty(), INCOMPLETE);
  }

  private static LoomKey loom(Facts facts, String id) {
    Connector connector = facts.harness().connectors().get(id);
    return LoomKey.of(connector == null ? null : connector.loom());
  }

  private static boolean isLost(Wiring wiring, Point cavity) {
    return !wiring.endsAt(cavity).isEmpty() && wiring.meets(cavity).isEmpty();
  }

  /** The same pair seen from the other half. */
  Joint turned() {
    return new Joint(/* near= */ far, /* far= */ near, turned(used), turned(free));
  }

  private static List<Contact> turned(List<Contact> contacts) {
    return contacts.stream().map(Contact::turned).sorted(Contact.IN_ORDER).toList();
  }

  /** The connector it is known by. */
  String id() {
    return near.connector();
  }

  /** As people say it: {@code X1 and X2}. */
  String text() {
    return near.connector() + " and " + far.connector();
  }

  /** What pairs that may be merged have in common: looms and nodes of both halves. */
  String stands() {
    String one = near.stand();
    String other = far.stand();
    return one.compareTo(other) <= 0 ? one + "||" + other : other + "||" + one;
  }
}
