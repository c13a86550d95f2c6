package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.model.Ref;
import org.tugtest.model.State;
import org.tugtest.network.Edge;
import org.tugtest.network.Reach;
import org.tugtest.protect.Ratings;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.table.Cited;
import org.tugtest.table.FuseRatingTable;

/** A fuse is made for fewer volts than it may have to break. */
public final class FuseVoltageLow implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("fuse-voltage-low", Heading.PROTECTION, Level.ERROR)
          .summary("a fuse is rated for fewer volts than the greatest of any state")
          .subjects("fitted fuses")
          .looksFor(
              """
              A fuse whose rated volts, its part's "maxV" or those of its style, are under the
              greatest open volts of the sources that lead to it, by themselves or in any state; of
              sources in a row the sum. Electronic trips are not judged, nor fuses of a style
              without known volts or before which no source gives volts.
              """)
          .why(
              """
              A fuse that opens at more volts than it is made for keeps burning as an arc inside its
              housing. A 32 V blade is not for 48 V.
              """)
          .remedy("Fit a fuse that is rated for the volts of its circuit, 58 V for a 48 V supply.")
          .basis(
              """
              33 CFR 183.455(d): the rated volts of a fuse are not under those of its circuit.
              Rated volts of blades: maker data as quoted, 32 V; of bolted fuses from memory.
              """)
          .follows(Cause.VOLTS_WRONG)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 48}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10,
                                            "style": "blade-mini"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 2.5}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 24}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10,
                                            "style": "blade-mini"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 2.5}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Heights heights = new Heights(facts);
    Ratings ratings = facts.protection().ratings();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement fuse
          && fuse.element() instanceof Element.Fuse place
          && fuse.fitted()
          && !place.electronic()) {
        judge(fuse, ratings, heights, ledger);
      }
    }
  }

  private static void judge(Edge.OfElement fuse, Ratings ratings, Heights heights, Ledger ledger) {
    Height height = heights.before(fuse);
    Optional<Cited> rated = rated(fuse, ratings);
    if (height == null) {
      ledger.notJudged(fuse.subject(), "no source before it gives volts");
    } else if (rated.isEmpty()) {
      ledger.notJudged(fuse.subject(), "neither it nor its style gives rated volts");
    } else if (height.volts() <= rated.get().value()) {
      ledger.fine();
    } else {
      ledger.finding(finding(fuse, height, rated.get(), ratings));
    }
  }

  private static Optional<Cited> rated(Edge.OfElement fuse, Ratings ratings) {
    Double given = ratings.part(fuse).map(FusePart::maxV).orElse(null);
    return given != null
        ? Optional.of(Cited.given(given))
        : ratings.style(fuse).flatMap(FuseRatingTable::volts);
  }

  private static Finding.Draft finding(
      Edge.OfElement fuse, Height height, Cited rated, Ratings ratings) {
    Measured measured = Measured.over(height.volts(), rated.value(), "V");
    List<String> names = height.sources().stream().map(Edge.OfElement::text).toList();
    Finding.Draft draft =
        Finding.on(fuse.subject())
            .message(
                "fuse "
                    + fuse.text()
                    + ratings.part(fuse).map(part -> " (" + part.id() + ")").orElse("")
                    + " is rated for "
                    + measured.limitShown()
                    + " V, but "
                    + org.tugtest.text.Series.and(names, names.size())
                    + (names.size() == 1 ? " gives " : " in a row give ")
                    + measured.actualShown()
                    + " V"
                    + (height.state() == null ? "" : " in state " + height.state()))
            .remedy(
                "fit a fuse rated for at least " + measured.actualShown() + " V in " + fuse.text())
            .measured(measured)
            .basis(rated.basis())
            .state(height.state());
    if (rated.basis() != org.tugtest.finding.Basis.GIVEN) {
      draft.detail(
          "rated volts of its style: " + rated.source() + "; \"maxV\" of its part replaces it");
    }
    height.sources().forEach(source -> draft.and(source.subject()));
    return draft;
  }

  /**
   * How high above the least minus a plus stands.
   *
   * @param state in which it stands so high; null: as the sources give it
   * @param sources that add up to it
   */
  private record Height(double volts, @Nullable String state, List<Edge.OfElement> sources) {}

  /** The heights of all sources. */
  private static final class Heights {
    private final Facts facts;
    private final List<Reach> reaches = new ArrayList<>();
    private final IdentityHashMap<Edge.OfElement, Height> known = new IdentityHashMap<>();

    Heights(Facts facts) {
      this.facts = facts;
      for (Edge.OfElement source : facts.network().sources()) {
        reaches.add(facts.protection().feed(source));
      }
    }

    /** The greatest height of the sources that lead to a fuse; null when none gives volts. */
    @Nullable Height before(Edge.OfElement fuse) {
      Height greatest = null;
      List<Edge.OfElement> sources = facts.network().sources();
      for (int i = 0; i < sources.size(); i++) {
        if (reaches.get(i).reaches(fuse.a()) || reaches.get(i).reaches(fuse.b())) {
          greatest = greater(greatest, of(sources.get(i), new LinkedHashSet<>()));
        }
      }
      return greatest;
    }

    private static @Nullable Height greater(@Nullable Height one, @Nullable Height other) {
      return one == null || (other != null && other.volts() > one.volts()) ? other : one;
    }

    private @Nullable Height of(Edge.OfElement source, Set<Edge.OfElement> above) {
      Height before = known.get(source);
      if (before != null) {
        return before;
      }
      Height own = own(source);
      if (own == null || !above.add(source)) {
        return own;
      }
      Height below = null;
      List<Edge.OfElement> sources = facts.network().sources();
      for (int i = 0; i < sources.size(); i++) {
        if (!above.contains(sources.get(i)) && reaches.get(i).reaches(source.b())) {
          below = greater(below, of(sources.get(i), above));
        }
      }
      above.remove(source);
      Height sum = below == null ? own : sum(own, below);
      known.put(source, sum);
      return sum;
    }

    private static Height sum(Height own, Height below) {
      List<Edge.OfElement> all = new ArrayList<>(own.sources());
      all.addAll(below.sources());
      String state = own.state() == null ? below.state() : own.state();
      return new Height(own.volts() + below.volts(), state, all);
    }

    private @Nullable Height own(Edge.OfElement source) {
      Double volts = ((Element.Source) source.element()).volts();
      Height greatest = volts == null ? null : new Height(volts, null, List.of(source));
      for (State state : facts.harness().states().values()) {
        Double here = state.volts().get(new Ref(source.device(), null, source.name()));
        if (here == null) {
          here = state.volts().get(new Ref(source.device(), null, null));
        }
        if (here != null) {
          greatest = greater(greatest, new Height(here, state.id(), List.of(source)));
        }
      }
      return greatest;
    }
  }
}
