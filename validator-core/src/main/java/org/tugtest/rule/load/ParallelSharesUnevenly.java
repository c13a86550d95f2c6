package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** One of several wires or contacts side by side takes more than it may. */
public final class ParallelSharesUnevenly implements Rule {
  private static final String LEAST = "leastPercent";
  private static final String MOST = "greatestPercent";
  private static final double PERCENT = 100;
  private static final double MILLI = 1e3;
  private static final double ROUNDING = 100;
  private static final double SOME_AMPS = 1e-6;

  /** A ratio this little over 1 is the arithmetic's, not the harness's. */
  private static final double SAME = 1e-9;

  private static final int NAMED = 4;
  private static final RuleInfo INFO =
      RuleInfo.of("parallel-shares-unevenly", Heading.LOAD, Level.WARNING)
          .summary("one of several wires or contacts side by side takes more than it may")
          .subjects("sets of wires and contacts side by side")
          .looksFor(
              """
              Wires, contacts and fuses in a row between two junctions that run side by side with
              others between the same two, in every lasting state. One of them is taken with half
              the resistance in its greatest contact, that of another with twice, and the network
              solved so: what the first then carries is held against the ampacity of its wires, the
              maxA of its terminals, and the rating of its contacts and fuses. A rating that it is
              over as the set stands is left to gauge-under-load, terminal-overloaded,
              switch-overloaded and fuse-near-rating. Ways with something between them are no set.
              """)
          .why(
              """
              Two pins of 13 A are no pin of 26 A: a few milliohms of wear in one push its current
              into the other, which then runs hot, wears and pushes it on.
              """)
          .remedy(
              """
              Size each of them for the current that the finding gives, or take one that carries all
              of it.
              """)
          .basis(
              """
              Half and twice the resistance of a contact that is reckoned with: common practice for
              a new contact and a worn one.
              """)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .setting(
              new Setting(
                  LEAST, 50, 0, 100, "%", "of its ohms that a good contact has (common practice)"))
          .setting(
              new Setting(
                  MOST,
                  200,
                  100,
                  1000,
                  "%",
                  "of its ohms that a worn contact has (common practice)"))
          .failing(example(20))
          .passing(example(14))
          .build();

  private static String example(int amps) {
    return Example.filled(
        """
        {"format": 1,
         "parts": {
           "housings": {"s": {"side": "socket", "family": "t2.8", "rows": [["1", "2", "3"]], "terminals": ["ts"]},
                        "p": {"side": "pin", "family": "t2.8", "rows": [["3", "2", "1"]]}},
           "terminals": {"ts": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.35, "areaMaxMm2": 2.5, "maxA": 13}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ECU": {"ports": {"plug": {"housing": "p"}},
                   "elements": {"bar": {"kind": "link", "a": "1", "b": "2"},
                                "power": {"kind": "load", "a": "1", "b": "3", "amps": %d}}}},
         "splices": {"S1": {}},
         "connectors": {"X1": {"housing": "s", "mates": "ECU"}},
         "wires": {"W1": {"from": "BAT:+", "to": "S1", "areaMm2": 6, "cutMm": 300},
                   "W2": {"from": "S1", "to": "X1:1", "areaMm2": 2.5, "cutMm": 300},
                   "W3": {"from": "S1", "to": "X1:2", "areaMm2": 2.5, "cutMm": 300},
                   "W4": {"from": "X1:3", "to": "BAT:-", "areaMm2": 6, "cutMm": 300}}}
        """,
        amps);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    List<OperatingPoint> all = facts.operating().all();
    boolean lasts = all.stream().anyMatch(state -> !state.brief());
    Map<String, List<UnevenShare>> found = new TreeMap<>(NaturalOrder.NATURAL);
    Map<String, Unknown> unknown = new TreeMap<>(NaturalOrder.NATURAL);
    for (OperatingPoint state : all) {
      if (!state.brief() || !lasts) {
        for (List<List<Edge>> set : ParallelSets.in(facts.network(), state)) {
          add(facts, settings, state, set, found, unknown);
        }
      }
    }
    unknown.keySet().removeAll(found.keySet());
    unknown.values().forEach(why -> ledger.notJudged(why.subject(), why.reason()));
    for (List<UnevenShare> shares : found.values()) {
      if (lasts) {
        judge(shares, settings, ledger);
      } else {
        ledger.notJudged(shares.get(0).strands().get(0).subject(), "no state lasts");
      }
    }
  }

  /** Why a set was not judged. */
  private record Unknown(Subject subject, String reason) {}

  private static void add(
      Facts facts,
      Settings settings,
      OperatingPoint state,
      List<List<Edge>> set,
      Map<String, List<UnevenShare>> found,
      Map<String, Unknown> unknown) {
    List<Strand> strands =
        set.stream()
            .map(edges -> Strand.of(facts, state, edges))
            .sorted(Comparator.comparing(Strand::text, NaturalOrder.NATURAL))
            .toList();
    String key = String.join(" ", strands.stream().map(Strand::text).toList());
    Subject subject = strands.get(0).subject();
    if (!strands.stream().allMatch(strand -> strand.known(state))) {
      unknown.put(key, new Unknown(subject, "the resistance of one of them is not known"));
    } else if (strands.stream().filter(strand -> strand.ohms() <= 0).count() > 0) {
      unknown.put(key, new Unknown(subject, "one of them gives no resistance"));
    } else if (strands.stream().allMatch(strand -> strand.ratings().isEmpty())) {
      unknown.put(key, new Unknown(subject, "what they may carry is not known"));
    } else {
      double least = settings.number(LEAST, subject) / PERCENT;
      double most = settings.number(MOST, subject) / PERCENT;
      UnevenShare.worst(facts.network(), state, strands, least, most)
          .ifPresentOrElse(
              share -> found.computeIfAbsent(key, none -> new ArrayList<>()).add(share),
              () -> unknown.put(key, new Unknown(subject, "they are over their ratings as it is")));
    }
  }

  private static void judge(List<UnevenShare> shares, Settings settings, Ledger ledger) {
    UnevenShare worst =
        shares.stream()
            .reduce((one, other) -> other.ratio() > one.ratio() ? other : one)
            .orElseThrow();
    if (worst.ratio() <= 1 + SAME || worst.amps() < SOME_AMPS) {
      ledger.fine();
      return;
    }
    double stands = Math.floor(worst.rating().amps() * ROUNDING + 1e-9) / ROUNDING;
    Measured measured = Measured.over(worst.amps(), stands, "A");
    double sum = UnevenShare.sum(worst.state(), worst.strands());
    Basis basis = Basis.COMMON_PRACTICE.weaker(worst.rating().basis());
    List<String> names = worst.strands().stream().map(Strand::text).toList();
    Finding.Draft draft =
        Finding.on(worst.rating().subject())
            .message(
                String.format(
                    Locale.ROOT,
                    "%s carries %s of the %s A that %s share in state %s when %s; it may carry %s"
                        + " A",
                    worst.rating().text(),
                    measured.actualShown() + " A",
                    amps(sum),
                    Series.and(names, NAMED),
                    worst.state().state(),
                    contacts(worst, settings),
                    measured.limitShown()))
            .remedy(
                "size each of them for "
                    + up(worst.amps())
                    + " A, or take one that carries all "
                    + up(sum)
                    + " A")
            .measured(measured)
            .state(worst.state().state());
    for (Strand strand : worst.strands()) {
      basis = basis.weaker(strand.basis());
      draft.detail(
          String.format(
              Locale.ROOT,
              "%s: %.2f milliohm, %s A as it stands",
              strand.text(),
              strand.ohms() * MILLI,
              amps(UnevenShare.now(worst.state(), strand))));
      if (!strand.subject().equals(worst.rating().subject())) {
        draft.and(strand.subject());
      }
    }
    for (UnevenShare share : shares) {
      if (!share.equals(worst) && share.ratio() > 1 + SAME) {
        draft.detail(
            "also in state "
                + share.state().state()
                + ": "
                + amps(share.amps())
                + " A in "
                + share.rating().text());
      }
    }
    ledger.finding(draft.basis(basis));
  }

  private static String contacts(UnevenShare worst, Settings settings) {
    Strand low = worst.strands().get(worst.low());
    Strand high = worst.strands().get(worst.high());
    Subject subject = worst.strands().get(0).subject();
    List<String> texts = new ArrayList<>();
    contact(low, settings.number(LEAST, subject) / PERCENT, texts);
    contact(high, settings.number(MOST, subject) / PERCENT, texts);
    return Series.and(texts);
  }

  private static void contact(Strand strand, double times, List<String> texts) {
    Edge contact = strand.contact();
    if (contact != null) {
      String what = contact instanceof Edge.OfWire ? "the ends of " : "";
      texts.add(
          String.format(
              Locale.ROOT,
              "%s%s ha%s %.2f milliohm",
              what,
              contact.text(),
              what.isEmpty() ? "s" : "ve",
              times * strand.contactOhms() * MILLI));
    }
  }

  private static String amps(double amps) {
    return String.format(Locale.ROOT, "%.1f", amps);
  }

  private static String up(double amps) {
    return String.format(Locale.ROOT, "%.1f", Math.ceil(amps * 10 - 1e-9) / 10);
  }
}
