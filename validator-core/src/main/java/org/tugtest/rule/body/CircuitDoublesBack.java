package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.route.ShortWays;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;

/** A circuit runs out and back, or takes a long way round. */
public final class CircuitDoublesBack implements Rule {
  private static final String PERCENT = "percent";
  private static final String LEAST = "mm";
  private static final String GRAVE = "graveMm";
  private static final double HUNDRED = 100;

  private static final RuleInfo INFO =
      RuleInfo.of("circuit-doubles-back", Heading.BODY, Level.NOTE)
          .gravest(Level.WARNING)
          .summary("a circuit runs out and back, or takes a long way round")
          .subjects("wires one after another without a branch")
          .looksFor(
              """
              Wires that follow each other through plugged contacts and splices of two ends, from a
              pin or branch to the next: their length along the layout against the shortest way
              between their ends, on the segments of their looms. It fires over 150 % and 500 mm
              more; and whatever the share, where 500 mm of it are out and back within one loom. It
              fires too for a branch to a load that runs back 500 mm or more along the way its feed
              or return came. A pair of connectors through which only such circuits go exists for
              the detour alone: one finding for the pair, with all of them. A warning where that is
              so, unless a plug closes the loop in itself, or from 1500 mm on. Chains with a wire
              that has no route are not judged.
              """)
          .why(
              """
              Wire that goes somewhere only to come back is mass and volts lost twice, and a plug in
              its turning point is one more place where the circuit opens.
              """)
          .remedy(
              """
              Lead the circuit the short way; take "via" out where it is not needed; move the
              splice to where the branch leaves. Leave a loop that is an interlock as it is.
              """)
          .basis(
              """
              Follows from the layout. What is far too long: common practice. Masses and
              resistances that the parts do not give are computed from tables.
              """)
          .setting(
              new Setting(
                  PERCENT, 150, 100, 1000, "%", "length by the shortest way (common practice)"))
          .setting(
              new Setting(LEAST, 500, 0, 100_000, "mm", "least length too much (common practice)"))
          .setting(
              new Setting(
                  GRAVE, 1500, 0, 100_000, "mm", "from here on a warning (common practice)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 200},
                                       "s2": {"from": "a", "to": "c", "lengthMm": 1500}}},
               "parts": {"housings": {"p": {"side": "pin", "rows": [["1", "2"]]},
                                      "s": {"side": "socket", "rows": [["2", "1"]]}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "connectors": {"X": {"housing": "s", "at": "c", "mates": "Y"},
                              "Y": {"housing": "p"}},
               "wires": {"W1": {"from": "A:1", "to": "X:1", "areaMm2": 1},
                         "W2": {"from": "Y:1", "to": "B:1", "areaMm2": 1}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "c", "lengthMm": 800},
                                       "s2": {"from": "c", "to": "b", "lengthMm": 1500}}},
               "parts": {"housings": {"p": {"side": "pin", "rows": [["1", "2"]]},
                                      "s": {"side": "socket", "rows": [["2", "1"]]}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "connectors": {"X": {"housing": "s", "at": "c", "mates": "Y"},
                              "Y": {"housing": "p"}},
               "wires": {"W1": {"from": "A:1", "to": "X:1", "areaMm2": 1},
                         "W2": {"from": "Y:1", "to": "B:1", "areaMm2": 1}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    List<Chain.Run> runs = new ArrayList<>();
    ShortWays ways = new ShortWays(facts.harness());
    for (Chain chain : Chains.of(facts)) {
      Chain.Run run = Chains.run(facts, chain).orElse(null);
      if (run == null) {
        ledger.notJudged(chain.subject(), "a wire of it has no route");
      } else if (!ledger.switchedOff(chain.subject())) {
        runs.add(run);
        ways.ask(run.from(), run.to(), chain.looms());
      }
    }
    ways.find();
    Detour.Measure measure = new Detour.Measure(facts);
    List<Detour> detours = new ArrayList<>();
    Set<String> fine = new HashSet<>();
    for (Chain.Run run : runs) {
      Chain chain = run.chain();
      ShortWays.ShortWay direct = ways.way(run.from(), run.to(), chain.looms()).orElse(null);
      if (direct == null) {
        ledger.notJudged(chain.subject(), "no direct way joins its ends");
      } else if (!chain.from().equals(chain.to())
          && tooLong(run.mm(), direct.mm(), settings, chain.subject())) {
        detours.add(measure.of(run, direct));
      } else if (!chain.from().equals(chain.to()) && outAndBack(run, direct.mm(), settings)) {
        Detour detour = measure.of(run, direct);
        if (detour.beyond().stream().allMatch(joint -> inOneLoom(facts, joint))) {
          detours.add(detour);
        } else {
          fine.add(chain.wires().get(0));
        }
      } else {
        fine.add(chain.wires().get(0));
      }
    }
    DetourFindings findings = new DetourFindings(facts, settings.number(GRAVE));
    findings.report(detours, ledger);
    Set<String> detoured = new HashSet<>();
    detours.forEach(detour -> detoured.addAll(detour.run().chain().wires()));
    for (List<BranchReturns.Return> lot : returns(facts, runs, settings, detoured).values()) {
      ledger.finding(findings.branches(lot), DetourFindings.judged(lot));
      lot.forEach(back -> back.last().chain().wires().forEach(fine::remove));
    }
    ledger.fine(fine.size());
  }

  private static boolean tooLong(double mm, double directMm, Settings settings, Subject subject) {
    double extra = mm - directMm;
    return extra > 0
        && extra >= settings.number(LEAST, subject)
        && mm > settings.number(PERCENT, subject) / HUNDRED * directMm;
  }

  /** Whether it runs out and back far enough, however long it is otherwise. */
  private static boolean outAndBack(Chain.Run run, double directMm, Settings settings) {
    double least = settings.number(LEAST, run.chain().subject());
    double back = 2 * Doubled.of(run.pieces()).mm();
    return back > 0 && back >= least && run.mm() - directMm >= least;
  }

  /** A pair that joins two looms has to be gone to. */
  private static boolean inOneLoom(Facts facts, Chain.Joint joint) {
    return loom(facts, joint.one()).equals(loom(facts, joint.two()));
  }

  private static String loom(Facts facts, String connector) {
    Connector found = facts.harness().connectors().get(connector);
    return found == null || found.loom() == null ? "" : found.loom();
  }

  /** Branches that run back too far, by the splice they run back from. */
  private static Map<String, List<BranchReturns.Return>> returns(
      Facts facts, List<Chain.Run> runs, Settings settings, Set<String> detoured) {
    Map<String, List<BranchReturns.Return>> bySplice = new TreeMap<>(NaturalOrder.NATURAL);
    for (BranchReturns.Return back : new BranchReturns(facts, runs).all()) {
      double mm = back.way().stream().mapToDouble(Chain.Run::mm).sum();
      double doubled = back.doubled().mm();
      boolean known =
          back.way().stream().noneMatch(run -> detoured.contains(run.chain().wires().get(0)));
      Subject subject = back.last().chain().subject();
      if (known
          && doubled >= settings.number(LEAST, subject)
          && tooLong(mm, mm - 2 * doubled, settings, subject)) {
        bySplice
            .computeIfAbsent(back.last().chain().from().text(), splice -> new ArrayList<>())
            .add(back);
      }
    }
    return bySplice;
  }
}
