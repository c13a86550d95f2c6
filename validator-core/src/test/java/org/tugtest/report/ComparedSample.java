package org.tugtest.report;

import java.util.List;
import java.util.Map;
import org.tugtest.check.RuleCatalog;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Compared;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.compare.cause.LeastCause;
import org.tugtest.compare.cause.ThreeWay;
import org.tugtest.finding.Level;
import org.tugtest.model.AnnouncedChange;
import org.tugtest.model.Ref;

/** A small harness and a revision of it, compared; for tests. */
public final class ComparedSample {
  private static final String BEFORE =
      """
      {
        "format": 1, "title": "Work lamps", "revision": "B",
        "loom": {"id": "front"},
        "defaults": {"nominalV": 12},
        "parts": {
          "wires": {"w1": {"areaMm2": 1.0, "maxC": 125, "gramsPerM": 11}, "w15": {"areaMm2": 1.5, "maxC": 125, "gramsPerM": 16},
                    "w25": {"areaMm2": 2.5, "maxC": 125}},
          "fuses": {"mini-10": {"ratingA": 10, "style": "blade-mini"}, "mini-15": {"ratingA": 15, "style": "blade-mini"}},
          "housings": {
            "skt": {"side": "socket", "family": "t2.8", "rows": [["1", "2", "3"], ["4", "", "6"]], "matesWith": ["pin"], "grams": 9},
            "pin": {"side": "pin", "family": "t2.8", "rows": [["3", "2", "1"], ["6", "", "4"]]}
          }
        },
        "devices": {
          "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
          "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}, "f2": {"kind": "fuse", "a": "in", "b": "2"}}},
          "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2", "ratingA": 16}}},
          "LAMPS": {"ports": {"plug": {"housing": "pin"}}, "elements": {
            "left": {"kind": "load", "a": "1", "b": "2", "watts": 35, "atVolts": 12},
            "right": {"kind": "load", "a": "3", "b": "2", "watts": 35, "atVolts": 12}}}
        },
        "fitted": {"FB.f1": "mini-10"},
        "connectors": {"X1": {"housing": "skt", "mates": "LAMPS"}},
        "splices": {"S1": {}},
        "wires": {
          "W1": {"from": "BAT:+", "to": "FB:in", "part": "w15", "cutMm": 300, "colour": "RD"},
          "W2": {"from": "FB:1", "to": "SW:1", "part": "w1", "cutMm": 900, "colour": "RD/WH"},
          "W3": {"from": "SW:2", "to": "S1", "part": "w1", "cutMm": 700, "colour": "YE"},
          "W4": {"from": "S1", "to": "X1:1", "part": "w1", "cutMm": 400, "colour": "YE"},
          "W5": {"from": "S1", "to": "X1:3", "part": "w1", "cutMm": 400, "colour": "YE/BK"},
          "W6": {"from": "X1:2", "to": "BAT:-", "part": "w1", "cutMm": 1500, "colour": "BK"}
        },
        "states": {"on": {"set": {"SW": "on"}, "on": ["LAMPS"]}}
      }
      """;

  private ComparedSample() {}

  /** The text before. */
  public static String before() {
    return BEFORE;
  }

  /** The text after: re-pinned, renamed, re-gauged, re-rated, lengthened, and policy changed. */
  public static String after() {
    return BEFORE
        .replace("\"revision\": \"B\"", "\"revision\": \"C\"")
        .replace("\"X1:3\", \"part\": \"w1\"", "\"X1:4\", \"part\": \"w1\"")
        .replace("\"W4\":", "\"W14\":")
        .replace(
            "\"X1:2\", \"to\": \"BAT:-\", \"part\": \"w1\"",
            "\"X1:2\", \"to\": \"BAT:-\", \"part\": \"w15\"")
        .replace("\"cutMm\": 900", "\"cutMm\": 1200")
        .replace("\"FB.f1\": \"mini-10\"", "\"FB.f1\": \"mini-15\"")
        .replace("\"S1\"", "\"S7\"")
        .replace(
            "\"states\"",
            "\"limits\": {\"colour-ambiguous\": {\"level\": \"off\"}},\n        \"states\"");
  }

  /** The report on the one compared with the other. */
  public static Report report() {
    return of(before(), after());
  }

  /** The report on a root compared with another text of it. */
  public static Report of(String before, String after) {
    return of(Compared.snapshot("1a2b3c4", before), Compared.snapshot("the files", after));
  }

  /** The report on a root of which there was nothing before. */
  public static Report first() {
    Snapshot after = Compared.snapshot("the files", after());
    return of(Snapshot.absent("1a2b3c4", after.facts()), after);
  }

  /** The report on a merge of two revisions that each put a wire into one cavity. */
  public static Report merge() {
    String wires = "\"wires\": {";
    String one = wires + "\"P1\": {\"from\": \"SW:2\", \"to\": \"X1:6\", \"part\": \"w1\"},";
    String other = wires + "\"Q1\": {\"from\": \"FB:2\", \"to\": \"X1:6\", \"part\": \"w1\"},";
    Snapshot base = Compared.snapshot("base", BEFORE);
    Snapshot ours = Compared.snapshot("ours", BEFORE.replace(wires, one));
    Snapshot theirs = Compared.snapshot("theirs", BEFORE.replace(wires, other));
    Snapshot merge =
        Compared.snapshot(
            "the merge", BEFORE.replace(wires, one + other.substring(wires.length())));
    ThreeWay threeWay = ThreeWay.of(base, ours, theirs, merge, RuleCatalog.standard(), 200);
    Baseline baseline =
        new Baseline(
                Comparison.of(ours, merge),
                List.of(Comparison.of(theirs, merge)),
                Announced.of(Comparison.of(ours, merge), List.of(), List.of()))
            .explained(Map.of(), threeWay.meetings());
    return new Report(
        "1.2.3",
        "src/main/harness",
        Reports.REVISION,
        new Gate(Level.ERROR, 0).forNewOnly(),
        RuleCatalog.standard().infos(),
        List.of(new HarnessReport(merge.facts(), merge.result(), baseline)));
  }

  private static Report of(Snapshot before, Snapshot after) {
    Comparison comparison = Comparison.of(before, after);
    Announced announced =
        Announced.of(
            comparison,
            List.of(),
            List.of(
                new AnnouncedChange(
                    "right-lamp",
                    List.of(Ref.parse("LAMPS:4"), Ref.parse("BAT:-")),
                    "why",
                    "bench")));
    return new Report(
        "1.2.3",
        "src/main/harness",
        Reports.REVISION,
        new Gate(Level.ERROR, 0).forNewOnly().forAnnouncedOnly(),
        RuleCatalog.standard().infos(),
        List.of(
            new HarnessReport(
                after.facts(),
                after.result(),
                new Baseline(comparison, List.of(), announced)
                    .explained(LeastCause.of(comparison, RuleCatalog.standard(), 60), List.of()))));
  }
}
