package org.tugtest.report;

import java.util.List;
import java.util.function.BiConsumer;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** Rules that are only in the sample, for what no rule of the catalogue does with it. */
final class SampleRules {
  private static final String HOSTILE =
      "\u001b[31m@all <img src=x> | #12 ]]> \ud83d ::error:: a\nb %0A *x* 'y' & ü :100: 🔋";

  private SampleRules() {}

  /** One missing earth and two loads that go dead with it. */
  static Rule earth() {
    return rule(
        info("sample-earth", Heading.LOAD, Level.ERROR, "a stud has no way to minus"),
        (facts, ledger) -> {
          Finding.Draft missing =
              Finding.on(Subject.device("STUD"))
                  .message("STUD has no way to minus")
                  .remedy("run a wire from STUD to battery minus");
          ledger.finding(missing);
          for (String lamp : List.of("LAMP-L", "LAMP-R")) {
            ledger.finding(
                Finding.on(Subject.device(lamp))
                    .message(lamp + " has no return")
                    .remedy("")
                    .level(lamp.endsWith("R") ? Level.NOTE : Level.ERROR)
                    .cause("sample-earth(devices/STUD)"));
          }
        });
  }

  /** A figure over its limit, from memory, in a state, with more detail lines than are shown. */
  static Rule volts() {
    return rule(
        info("sample-volts", Heading.LOAD, Level.ERROR, "a lamp loses too many volts"),
        (facts, ledger) -> {
          Finding.Draft draft =
              Finding.on(Subject.device("LAMP-L"), Subject.wire("R014"))
                  .message("LAMP-L loses 0.61 V in state night run; at most 0.6 V is allowed")
                  .remedy("use a thicker wire for R014")
                  .measured(Measured.over(0.6100001, 0.6, "V"))
                  .basis(Basis.MEMORY)
                  .state("night run");
          for (int i = 1; i <= 10; i++) {
            draft.detail("step " + i + " of the path: 0.06" + i + " V");
          }
          ledger.finding(draft);
          ledger.notJudged(Subject.device("LAMP-R"), "it gives no amps");
          ledger.notJudged(Subject.device("STUD"), "it gives no amps");
          ledger.notJudged(Subject.device("PUMP"), "its wire gives no length");
        });
  }

  /** Says what formats stumble over. */
  static Rule names() {
    return rule(
        info("sample-names", Heading.WRITTEN, Level.NOTE, "a wire has a strange name"),
        (facts, ledger) -> {
          ledger.fine(facts.harness().wires().size() - 1);
          ledger.finding(
              Finding.on(Subject.wire("W4"))
                  .message("wire W4 is called " + HOSTILE)
                  .remedy("name it *plainly*, [say] `lamp_feed` | <b>")
                  .detail("known: " + HOSTILE));
        });
  }

  /** A rule with nothing to look at. */
  static Rule idle() {
    return rule(
        info("sample-idle", Heading.BODY, Level.ERROR, "a segment is bad"), (facts, ledger) -> {});
  }

  /** A rule that breaks. */
  static Rule broken() {
    return rule(
        info("sample-broken", Heading.BUILT, Level.ERROR, "never said"),
        (facts, ledger) -> {
          throw new IllegalStateException("lost <its> way\nin " + facts.harness().root());
        });
  }

  private static RuleInfo info(String id, Heading heading, Level level, String summary) {
    return RuleInfo.of(id, heading, level)
        .summary(summary)
        .subjects("devices & wires")
        .looksFor("Made up for the sample: " + summary + ".")
        .why("It shows how a report looks.")
        .remedy("Nothing to do.")
        .basis("Made up.")
        .setting(new Setting("percent", 3, 0.5, 20, "%", "allowed drop"))
        .failing("{\"format\": 1}\n")
        .passing("{\"format\": 1, \"sketch\": true}\n")
        .build();
  }

  private static Rule rule(RuleInfo info, BiConsumer<Facts, Ledger> judge) {
    return new Rule() {
      @Override
      public RuleInfo info() {
        return info;
      }

      @Override
      public void judge(Facts facts, Settings settings, Ledger ledger) {
        judge.accept(facts, ledger);
      }
    };
  }
}
