package org.tugtest.rule.written;

import org.tugtest.expect.Expectations;
import org.tugtest.expect.Verdict;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** Something that the team wants to stay true is not true. */
public final class ExpectationUnmet implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("expectation-unmet", Heading.WRITTEN, Level.ERROR)
          .summary("an expectation of the team does not hold")
          .subjects("expectations")
          .looksFor(
              """
              An entry of "expectations" that is not true: points that shall be joined and are not,
              points that shall be apart and are joined, a place that is fed past its fuse, and so
              on. The sentence names the circuit that breaks it.
              """)
          .why(
              """
              The team wrote down what must stay true, often because the rules of an event ask for
              it. A change that breaks it is seldom meant.
              """)
          .remedy(
              """
              Put the circuit right where the sentence says so, or change the expectation when the
              team has come to want something else.
              """)
          .basis("The team's own statement.")
          .follows(
              Cause.JOINT_UNMADE,
              Cause.JOINT_ONE_SIDED,
              Cause.VOLTS_WRONG,
              Cause.SUPPLY_SHORTED,
              Cause.LOAD_STARVED)
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:2", "to": "B:2"}},
               "expectations": {"one-earth": {"that": "joined", "points": ["A:1", "B:2"]}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:2", "to": "B:2"}},
               "expectations": {"two-circuits": {"that": "apart", "points": ["A:1", "B:2"]}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Verdict verdict : Expectations.judge(facts)) {
      Subject subject = Subject.of("expectations", verdict.id());
      switch (verdict.answer()) {
        case HOLDS -> ledger.fine();
        case NOT_JUDGED -> ledger.notJudged(subject, verdict.message());
        case FAILS -> ledger.finding(finding(subject, verdict));
      }
    }
  }

  private static Finding.Draft finding(Subject subject, Verdict verdict) {
    Finding.Draft draft =
        Finding.on(subject)
            .message("expectation " + verdict.id() + " does not hold: " + verdict.message())
            .remedy("put the circuit right, or change the expectation if the team wants it so");
    verdict.at().forEach(draft::at);
    return draft;
  }
}
