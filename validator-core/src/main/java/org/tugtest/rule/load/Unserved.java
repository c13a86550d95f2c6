package org.tugtest.rule.load;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.rule.Ledger;
import org.tugtest.text.Series;

/**
 * Wanted loads and coils that lack one side in some state. Those whose loose ends are joined lack
 * it for one reason: the first is the cause of the others, and a relay's coil that of those that
 * wait for its contact.
 */
final class Unserved {
  private static final int STATES = 4;
  private static final int BLOCKERS = 6;
  private static final String UNKNOWN =
      "its way leads into a connector of which the sketch says no more";
  private final String rule;
  private final BiPredicate<Live, Edge.OfElement> lacks;
  private final BiFunction<Live, Edge.OfElement, Point> end;
  private final boolean thePlus;

  /** What a load lacks, in the order of the states. */
  private record Lack(Edge.OfElement load, Map<Live, Point> in) {}

  /**
   * @param rule id of the rule, for the causes
   * @param lacks whether a load lacks the side in a state
   * @param end the end at which it lacks it
   * @param thePlus whether the side is a source's plus
   */
  Unserved(
      String rule,
      BiPredicate<Live, Edge.OfElement> lacks,
      BiFunction<Live, Edge.OfElement, Point> end,
      boolean thePlus) {
    this.thePlus = thePlus;
    this.rule = rule;
    this.lacks = lacks;
    this.end = end;
  }

  /**
   * Judges every load and coil that a state wants.
   *
   * @param what the end of the sentence: {@code has no way to a source's plus}
   */
  void judge(Facts facts, Ledger ledger, String what, String remedy) {
    if (facts.network().sources().isEmpty()) {
      facts.network().edges().stream()
          .filter(edge -> edge instanceof Edge.OfElement in && in.element() instanceof Element.Load)
          .forEach(edge -> ledger.notJudged(edge.subject(), "the harness gives no source"));
      return;
    }
    List<Live> states = Live.all(facts);
    Map<Point, String> causes = new HashMap<>();
    RelayWaits relays = new RelayWaits(facts);
    for (Edge edge : facts.network().edges()) {
      if (!(edge instanceof Edge.OfElement user) || !isUser(user)) {
        continue;
      }
      boolean wanted = false;
      Lack lack = new Lack(user, new LinkedHashMap<>());
      for (Live live : states) {
        if (live.state().wanted(user)) {
          wanted = true;
          if (lacks.test(live, user) && !worksInARow(facts, live, user)) {
            lack.in().put(live, end.apply(live, user));
          }
        }
      }
      if (!lack.in().isEmpty() && !facts.unread().isEmpty()) {
        ledger.notJudged(user.subject(), Facts.FILE_UNREAD);
      } else if (leadsIntoTheUnknown(facts, lack)) {
        ledger.notJudged(user.subject(), UNKNOWN);
      } else if (!lack.in().isEmpty()) {
        ledger.finding(finding(facts, lack, causes, relays, what, remedy));
      } else if (wanted) {
        ledger.fine();
      }
    }
  }

  /**
   * Whether the way ends in a connector that a sketch only names: what lies behind it is not said.
   */
  private static boolean leadsIntoTheUnknown(Facts facts, Lack lack) {
    if (lack.in().isEmpty() || facts.wiring().implied().isEmpty()) {
      return false;
    }
    return lack.in().entrySet().stream()
        .allMatch(entry -> entry.getKey().joins(entry.getValue(), facts.wiring().implied()));
  }

  private static boolean worksInARow(Facts facts, Live live, Edge.OfElement user) {
    return user.element() instanceof Element.Load
        && live.worksInARow(user, Users.leastVolts(facts, user));
  }

  private static boolean isUser(Edge.OfElement edge) {
    return edge.element() instanceof Element.Load || edge.element() instanceof Element.Coil;
  }

  private static boolean isContact(Edge.OfElement edge) {
    return edge.element() instanceof Element.Contact;
  }

  private Finding.Draft finding(
      Facts facts,
      Lack lack,
      Map<Point, String> causes,
      RelayWaits relays,
      String what,
      String remedy) {
    Map.Entry<Live, Point> first = lack.in().entrySet().iterator().next();
    Subject subject = lack.load().subject();
    Point group = first.getKey().group(first.getValue());
    String identity = rule + "(" + subject.place() + ")";
    String cause = causes.putIfAbsent(group, identity);
    if (cause == null) {
      cause = relays.cause(lack.load(), first.getKey(), first.getValue(), thePlus).orElse(null);
    }
    List<String> states = lack.in().keySet().stream().map(live -> live.state().state()).toList();
    Optional<MeantContacts.Meant> meant =
        MeantContacts.of(facts).within(first.getKey(), first.getValue(), thePlus);
    Finding.Draft draft =
        Finding.on(subject)
            .message(
                lack.load().text()
                    + " "
                    + what
                    + " in "
                    + (states.size() == 1 ? "state " : "states ")
                    + Series.and(states, STATES))
            .remedy(meant.map(MeantContacts.Meant::question).orElse(remedy))
            .state(states.get(0))
            .cause(cause);
    meant.ifPresent(is -> draft.at(facts.places().of("wires/" + is.wire().id())));
    first.getKey().blockers(first.getValue(), thePlus).stream()
        .limit(BLOCKERS)
        .map(open -> open.text() + (isContact(open) ? " is open" : " has no fuse"))
        .forEach(draft::detail);
    return draft;
  }
}
