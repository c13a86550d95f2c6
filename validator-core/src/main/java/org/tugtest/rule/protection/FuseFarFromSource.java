package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.WireLength;
import org.tugtest.protect.FirstFuse;
import org.tugtest.route.Piece;
import org.tugtest.route.Route;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** The first fuse stands too far from its source. */
public final class FuseFarFromSource implements Rule {
  private static final int NAMED = 4;
  private static final int PARTIES = 12;
  private static final String BATTERY = "batteryMm";
  private static final String BARE = "bareMm";
  private static final String SHEATHED = "sheathedMm";

  private static final RuleInfo INFO =
      RuleInfo.of("fuse-far-from-source", Heading.PROTECTION, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("the first fuse stands too far from its source")
          .subjects("fuses that are the first behind a source")
          .looksFor(
              """
              The length of wire without a fuse from the plus of a source to each first fuse, along
              the shortest way. From a battery 1830 mm are allowed, past them it is an error. From
              any other source that does not limit itself: a warning past 178 mm of bare wire or
              1016 mm of wire that is covered all the way, an error past 1016 mm bare or 1830 mm
              covered. Wires on the way to a cranking motor, a load of 100 A or more, do not count.
              Fuses that are reached by the same wires are one finding. Where a length is not known,
              or whether a wire is covered, and that decides it, it is not judged.
              """)
          .why(
              """
              What lies before the first fuse burns when it chafes through, and the battery is the
              strongest source of the car. The shorter it is, the less can touch it.
              """)
          .remedy(
              """
              Move the fuse towards the source, or put one into the wire there. An alternator that
              limits its own current may say so: "selfLimiting": true with "maxA".
              """)
          .basis(
              """
              33 CFR 183.455(b): 7 in (178 mm), 40 in (1016 mm) when sheathed or enclosed the whole
              way; 183.460(a): 72 in (1830 mm) from a battery, the feed of the cranking motor exempt.
              That a load of 100 A or more is a cranking motor is common practice.
              """)
          .setting(
              new Setting(
                  BATTERY, 1830, 0, 20000, "mm", "allowed from a battery; 33 CFR 183.460(a)"))
          .setting(
              new Setting(
                  BARE,
                  178,
                  0,
                  20000,
                  "mm",
                  "allowed from any other source, bare; 33 CFR 183.455(b)(1)"))
          .setting(
              new Setting(
                  SHEATHED,
                  1016,
                  0,
                  20000,
                  "mm",
                  "allowed from any other source when covered all the way; 33 CFR 183.455(b)(2)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 16, "cutMm": 2400}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 16, "cutMm": 400}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    new Judgement(facts, settings, ledger).judge();
  }

  /** One run over one harness. */
  private static final class Judgement {
    private final Facts facts;
    private final Settings settings;
    private final Ledger ledger;
    private final Map<Subject, String> unjudged = new LinkedHashMap<>();
    private final Set<Subject> all = new LinkedHashSet<>();
    private final Set<Subject> bad = new LinkedHashSet<>();

    Judgement(Facts facts, Settings settings, Ledger ledger) {
      this.facts = facts;
      this.settings = settings;
      this.ledger = ledger;
    }

    void judge() {
      Set<String> exempt = exempt();
      Map<List<String>, List<FirstFuse>> alike = new LinkedHashMap<>();
      for (FirstFuse place : facts.protection().firstFuses(wire -> length(wire, exempt))) {
        place.fuses().forEach(fuse -> all.add(fuse.subject()));
        List<String> key = new ArrayList<>(List.of(place.source().text()));
        place.wires().forEach(wire -> key.add(wire.text()));
        alike.computeIfAbsent(key, none -> new ArrayList<>(1)).add(place);
      }
      alike.values().forEach(places -> judge(places, exempt));
      for (Subject fuse : all) {
        if (bad.contains(fuse)) {
          continue;
        }
        if (unjudged.containsKey(fuse)) {
          ledger.notJudged(fuse, unjudged.get(fuse));
        } else {
          ledger.fine();
        }
      }
    }

    private Set<String> exempt() {
      Set<String> exempt = new LinkedHashSet<>();
      for (Edge edge : facts.network().edges()) {
        if (edge instanceof Edge.OfWire wire && facts.protection().leadsToCrankingMotor(wire)) {
          exempt.add(wire.wire().id());
        }
      }
      return exempt;
    }

    private OptionalDouble length(Wire wire, Set<String> exempt) {
      if (exempt.contains(wire.id())) {
        return OptionalDouble.of(0);
      }
      Optional<WireLength> length = facts.lengths().of(wire);
      return length.isPresent() ? OptionalDouble.of(length.get().mm()) : OptionalDouble.empty();
    }

    private void judge(List<FirstFuse> places, Set<String> exempt) {
      FirstFuse first = places.get(0);
      List<Edge.OfWire> counted =
          first.wires().stream().filter(wire -> !exempt.contains(wire.wire().id())).toList();
      boolean battery = !((Element.Source) first.source().element()).generator();
      Optional<Boolean> sheathed = battery ? Optional.of(true) : sheathed(counted);
      double least = settings.number(battery ? BATTERY : BARE);
      double most = battery ? least : settings.number(SHEATHED);
      double bound = sheathed.orElse(true) ? most : least;
      double second = battery ? least : sheathed.orElse(true) ? settings.number(BATTERY) : most;
      if (first.mm() > bound) {
        ledger.finding(finding(places, counted, bound, first.mm() > second), subjects(places));
        bad.addAll(subjects(places));
      } else if (!first.unknown().isEmpty()) {
        subjects(places).forEach(fuse -> unjudged.put(fuse, "a length before it is not known"));
      } else if (sheathed.isEmpty() && first.mm() > least) {
        subjects(places)
            .forEach(
                fuse -> unjudged.put(fuse, "whether wires before it are covered is not known"));
      }
    }

    private static List<Subject> subjects(List<FirstFuse> places) {
      return places.stream()
          .flatMap(place -> place.fuses().stream())
          .map(Edge.OfElement::subject)
          .distinct()
          .toList();
    }

    /** Whether all of these are covered all the way; empty when a route is not known. */
    private Optional<Boolean> sheathed(List<Edge.OfWire> wires) {
      boolean unknown = false;
      for (Edge.OfWire wire : wires) {
        Route route = facts.routes().of(wire.wire().id()).orElse(null);
        if (route == null || route.pieces().isEmpty()) {
          unknown = true;
        } else if (route.pieces().stream().anyMatch(piece -> !covered(piece))) {
          return Optional.of(false);
        }
      }
      return unknown ? Optional.empty() : Optional.of(true);
    }

    private boolean covered(Piece piece) {
      Layout.Segment segment = facts.harness().layout().segments().get(piece.segment());
      return segment != null && !segment.coverings().isEmpty();
    }

    private Finding.Draft finding(
        List<FirstFuse> places, List<Edge.OfWire> counted, double bound, boolean error) {
      FirstFuse first = places.get(0);
      List<Subject> fuses = subjects(places);
      Measured measured = Measured.over(Math.round(first.mm() * 10) / 10.0, bound, "mm");
      List<String> names = fuses.stream().map(Subject::id).toList();
      boolean generator = ((Element.Source) first.source().element()).generator();
      String moved = names.size() == 1 ? names.get(0) : "these fuses";
      Finding.Draft draft =
          Finding.on(counted.get(0).subject())
              .message(
                  (names.size() == 1 ? "fuse " : "fuses ")
                      + Series.and(names, NAMED)
                      + (names.size() == 1 ? " stands " : " stand ")
                      + measured.actualShown()
                      + " mm of wire from "
                      + first.source().text()
                      + "; at most "
                      + measured.limitShown()
                      + " mm may be without a fuse")
              .remedy(
                  "put a fuse into "
                      + counted.get(0).text()
                      + " close to "
                      + first.way().start().text()
                      + ", or move "
                      + moved
                      + " there"
                      + (generator
                          ? "; if "
                              + first.source().text()
                              + " limits its own current, say \"selfLimiting\": true with \"maxA\""
                          : ""))
              .measured(measured)
              .basis(basis(counted))
              .level(error ? Level.ERROR : Level.WARNING)
              .detail(first.way().text());
      counted.subList(1, counted.size()).forEach(wire -> draft.and(wire.subject()));
      fuses.stream().limit(PARTIES).forEach(draft::and);
      return draft.and(first.source().subject());
    }

    private Basis basis(List<Edge.OfWire> counted) {
      Basis basis = Basis.SOURCE;
      for (Edge.OfWire wire : counted) {
        basis = facts.lengths().of(wire.wire()).map(WireLength::basis).orElse(basis).weaker(basis);
      }
      return basis;
    }
  }
}
