package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.Protection;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A wire or load can be reached from a source without a fuse. */
public final class FuseMissingUpstream implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("fuse-missing-upstream", Heading.PROTECTION, Level.ERROR)
          .summary("a wire or load can be reached from a source without a fuse")
          .subjects("wires on the feed side, and loads")
          .looksFor(
              """
              A wire or load with a way from the plus of a source that passes no fuse: through
              wires, plugs, splices, bolted metal, links, diodes in their direction and contacts
              that can be closed together. A source with "selfLimiting" and "maxA" counts as its own
              fuse, also for the free loads inside its device. Wires between a source and the first fuse
              are left to fuse-far-from-source, those from one battery to the next in a row to the
              fuse behind the last. Of several wires in a row the first is the finding; those behind
              it, and their loads, follow from it.
              """)
          .why(
              """
              When such a wire chafes through to the chassis, nothing opens. The battery gives
              hundreds of amperes until the wire has burnt, and the loom with it.
              """)
          .remedy(
              """
              Put a fuse into the wire close to the source, or feed it from a fused way. A starter
              cable that has none on purpose gets a waiver with the reason.
              """)
          .basis(
              """
              33 CFR 183.455 and 183.460: every ungrounded conductor needs a fuse or breaker but the
              feed of the cranking motor. Follows from the format for the rest.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "LAMP:1", "areaMm2": 1},
                         "W2": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 2.5, "cutMm": 150},
                         "W2": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 1},
                         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    new Judgement(facts, ledger).judge();
  }

  /** One run over one harness. */
  private static final class Judgement {
    private final Facts facts;
    private final Ledger ledger;
    private final Protection protection;
    private final BetterFit betterFit;
    private final Map<String, Exposure> bad = new LinkedHashMap<>();

    Judgement(Facts facts, Ledger ledger) {
      this.facts = facts;
      this.ledger = ledger;
      this.protection = facts.protection();
      this.betterFit = new BetterFit(facts);
    }

    void judge() {
      if (facts.network().sources().isEmpty()) {
        facts
            .harness()
            .wires()
            .keySet()
            .forEach(wire -> ledger.notJudged(Subject.wire(wire), Unjudged.NO_SOURCE));
        loads().forEach(load -> ledger.notJudged(load.subject(), Unjudged.NO_SOURCE));
        return;
      }
      for (Exposure exposure : protection.exposures()) {
        if (exposure.unbounded() && !protection.leadsToFirstFuse(exposure.wire())) {
          bad.put(exposure.wire().wire().id(), exposure);
        } else {
          fine(exposure.wire().subject());
        }
      }
      for (Exposure exposure : bad.values()) {
        Path way = exposure.unfused();
        if (way != null) {
          ledger.finding(finding(exposure.wire(), "wire " + exposure.wire().text(), way, true));
        }
      }
      loads().forEach(this::judge);
    }

    private void fine(Subject subject) {
      if (facts.unread().isEmpty()) {
        ledger.fine();
      } else {
        ledger.notJudged(subject, Facts.FILE_UNREAD);
      }
    }

    private List<Edge.OfElement> loads() {
      List<Edge.OfElement> loads = new ArrayList<>();
      for (Edge edge : facts.network().edges()) {
        if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Load) {
          loads.add(inside);
        }
      }
      return loads;
    }

    private void judge(Edge.OfElement load) {
      Path way = way(load);
      if (!protection.feed().reaches(load.a()) && !protection.feed().reaches(load.b())) {
        ledger.notJudged(load.subject(), "no source leads to it");
      } else if (way == null || protection.insideSelfLimiting(load)) {
        fine(load.subject());
      } else {
        ledger.finding(finding(load, "load " + load.text(), way, false));
      }
    }

    private @Nullable Path way(Edge.OfElement load) {
      Path toA = protection.unfused().path(load.a()).orElse(null);
      Path toB = protection.unfused().path(load.b()).orElse(null);
      boolean nearer = toA != null && (toB == null || toA.edges().size() <= toB.edges().size());
      return nearer ? toA : toB;
    }

    /** The first wire of a way that has a finding of its own; null when there is none. */
    private @Nullable Exposure first(Path way) {
      return way.edges().stream()
          .filter(Edge.OfWire.class::isInstance)
          .map(edge -> bad.get(edge.text()))
          .filter(Objects::nonNull)
          .findFirst()
          .orElse(null);
    }

    private Finding.Draft finding(Edge subject, String name, Path way, boolean wire) {
      String source = source(way);
      Exposure first = first(way);
      Finding.Draft draft =
          Finding.on(subject.subject())
              .message(name + " can be reached from " + source + " without a fuse")
              .remedy(remedy(subject, first, source, wire) + suits(first))
              .detail(way.text());
      if (first != null && !first.wire().equals(subject) && first.unfused() != null) {
        draft.cause(identity(first));
      }
      return draft;
    }

    /** The greatest fuse that the first unfused wire allows, in words; nothing when not known. */
    private String suits(@Nullable Exposure first) {
      return first == null
          ? ""
          : betterFit
              .greatestFuse(first.wire().wire())
              .map(
                  amps ->
                      "; at most "
                          + Figures.amps(amps)
                          + " for what "
                          + first.wire().text()
                          + " stands")
              .orElse("");
    }

    private static String remedy(
        Edge subject, @Nullable Exposure first, String source, boolean wire) {
      if (first == null || first.wire().equals(subject)) {
        return (wire ? "put a fuse into " + subject.text() : "feed it through a fuse")
            + " close to "
            + source
            + (wire ? ", or feed it from a fused way" : "");
      }
      return "put a fuse into " + first.wire().text() + ", which feeds it, close to " + source;
    }

    private String identity(Exposure first) {
      return Finding.on(first.wire().subject())
          .finish(INFO.id(), INFO.level(), facts.places())
          .identity();
    }

    private String source(Path way) {
      return facts.network().sources().stream()
          .filter(source -> source.a().equals(way.start()))
          .map(Edge.OfElement::text)
          .findFirst()
          .orElse(way.start().text());
    }
  }
}
