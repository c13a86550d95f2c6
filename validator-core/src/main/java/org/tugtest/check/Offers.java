package org.tugtest.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.rule.Cause;
import org.tugtest.rule.PartChoice;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.load.DropRemedy;
import org.tugtest.rule.load.Feed;
import org.tugtest.rule.load.VoltageDropExcessive;

/**
 * Tries the larger wire that a finding offers: every rule judges the harness with it, and the
 * finding says what came of it. The next larger is tried where a rule objects.
 */
final class Offers {
  /** The rule that offers a larger part for the wire that loses most on the way of a load. */
  private static final String DROP = "voltage-drop-excessive";

  /** What is put right by a larger part for the first subject. */
  private static final Set<Cause> TOO_THIN =
      EnumSet.of(Cause.WIRE_UNDER_LOAD, Cause.WIRE_UNDER_FUSE, Cause.WIRE_BURNS);

  /** So many parts are tried for one wire. */
  private static final int MOST_EACH = 3;

  /** So many parts are tried in all. */
  private static final int MOST = 12;

  /** So many wires are judged again in all; a larger harness is not, so that it takes no longer. */
  private static final int MOST_WIRES = 700;

  private static final String BOUND =
      "a part named here is judged by what flows, the fuses and what is at its ends alone";

  private final Facts facts;
  private final Trial trial;
  private final PartChoice choice;
  private final Map<String, Edge.OfWire> edges = new HashMap<>();
  private int left;

  private Offers(Facts facts, Trial trial) {
    this.facts = facts;
    this.trial = trial;
    this.choice = new PartChoice(facts);
    this.left = Math.min(MOST, MOST_WIRES / Math.max(1, facts.harness().wires().size()));
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfWire wire) {
        edges.put(wire.wire().id(), wire);
      }
    }
  }

  /** The findings, those that offer a part with what the rules say to it. */
  static List<CheckedFinding> tried(
      Facts facts, List<CheckedFinding> findings, RuleCatalog catalog) {
    List<Finding> all = findings.stream().map(CheckedFinding::finding).toList();
    Set<String> offering =
        catalog.infos().stream()
            .filter(
                rule ->
                    rule.id().equals(DROP) || rule.causes().stream().anyMatch(TOO_THIN::contains))
            .map(RuleInfo::id)
            .collect(Collectors.toSet());
    boolean none = all.stream().noneMatch(finding -> offers(offering, finding));
    boolean stock = facts.harness().parts().wires().values().stream().anyMatch(WirePart::stocked);
    if (none || !stock) {
      return findings;
    }
    Offers offers = new Offers(facts, Trial.of(facts, all, catalog));
    if (offers.left == 0) {
      return findings;
    }
    return findings.stream()
        .map(
            each ->
                !each.waived() && offers(offering, each.finding())
                    ? new CheckedFinding(offers.told(each.finding()), null)
                    : each)
        .toList();
  }

  /** Whether a finding offers a part; one that follows from another leaves that to its cause. */
  private static boolean offers(Set<String> offering, Finding finding) {
    return offering.contains(finding.rule()) && finding.cause() == null;
  }

  private Finding told(Finding finding) {
    DropRemedy.Offer offer =
        finding.rule().equals(DROP) ? forDrop(finding) : forWire(finding.firstSubject().id());
    if (offer == null) {
      return finding;
    }
    if (left == 0) {
      return finding.with(List.of(BOUND));
    }
    Wire wire = offer.wire().wire();
    List<String> lines = new ArrayList<>();
    for (WirePart part : offer.parts().stream().limit(MOST_EACH).toList()) {
      if (left == 0) {
        break;
      }
      left--;
      Optional<String> objection = objection(finding, wire, part);
      if (objection.isEmpty()) {
        lines.add(
            "with "
                + part.id()
                + choice.costs(wire, part)
                + ", "
                + wire.id()
                + " passes every rule of this check");
        break;
      }
      lines.add("with " + part.id() + ", " + objection.get());
    }
    return finding.with(lines);
  }

  /** The larger parts that stand what flows through a wire and suit its ends. */
  private DropRemedy.@Nullable Offer forWire(String id) {
    Edge.OfWire edge = edges.get(id);
    return edge == null
        ? null
        : new DropRemedy.Offer(
            edge,
            choice.larger(edge.wire()).stream()
                .filter(part -> choice.stands(edge, part))
                .filter(part -> choice.misfit(edge.wire(), part).isEmpty())
                .toList());
  }

  /** The parts for the wire that loses most, with which a load loses no more than it may. */
  private DropRemedy.@Nullable Offer forDrop(Finding finding) {
    String state = finding.state();
    Edge.OfElement load =
        facts.network().edges().stream()
            .filter(edge -> edge.subject().equals(finding.firstSubject()))
            .filter(Edge.OfElement.class::isInstance)
            .map(Edge.OfElement.class::cast)
            .findFirst()
            .orElse(null);
    if (state == null || load == null) {
      return null;
    }
    return facts
        .operating()
        .in(state)
        .flatMap(in -> Feed.of(facts, in, load))
        .flatMap(feed -> DropRemedy.offer(facts, feed, VoltageDropExcessive.limitV(facts, feed)))
        .filter(offer -> !offer.parts().isEmpty())
        .orElse(null);
  }

  /** What a rule says against a part; empty when none does. */
  private Optional<String> objection(Finding finding, Wire wire, WirePart part) {
    Subject subject = Subject.wire(wire.id());
    Optional<List<Finding>> then = trial.with(Map.of(wire.id(), part));
    if (then.isEmpty()) {
      return Optional.of("a rule breaks");
    }
    return then.get().stream()
        .filter(
            each ->
                trial.isWorse(each)
                    || isTheSame(each, finding)
                    || (each.subjects().contains(subject)
                        && (each.rule().equals(finding.rule()) || !trial.isUntouched(each))))
        .findFirst()
        .map(each -> each.rule() + ": " + each.message());
  }

  /** Whether a rule still says it of the same thing. */
  private static boolean isTheSame(Finding then, Finding now) {
    return then.rule().equals(now.rule()) && then.firstSubject().equals(now.firstSubject());
  }
}
