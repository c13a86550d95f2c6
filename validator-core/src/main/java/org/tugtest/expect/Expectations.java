package org.tugtest.expect;

import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Expectation;

/** Judges what a team expects to stay true. Nothing is passed over: each has a verdict. */
public final class Expectations {
  private Expectations() {}

  /** The verdicts on one harness. */
  private record Judged(List<Verdict> verdicts) {}

  /** A verdict for every expectation, in natural order of the ids; judged once for a harness. */
  public static List<Verdict> judge(Facts facts) {
    return facts.once(Judged.class, Expectations::judgeAll).verdicts();
  }

  private static Judged judgeAll(Facts facts) {
    return new Judged(
        facts.harness().expectations().values().stream()
            .map(expectation -> judgeRead(new Stated(facts, expectation)))
            .toList());
  }

  /** What a file that could not be read may hold cannot be said to be missing. */
  private static Verdict judgeRead(Stated stated) {
    Verdict verdict = judge(stated);
    Expectation.That that = stated.expectation().that();
    boolean mayBeThere =
        that == Expectation.That.FED
            || that == Expectation.That.JOINED
            || that == Expectation.That.FUSED_BY;
    return verdict.answer() == Verdict.Answer.FAILS
            && mayBeThere
            && !stated.facts().unread().isEmpty()
        ? stated.notJudged(Facts.FILE_UNREAD)
        : verdict;
  }

  private static Verdict judge(Stated stated) {
    Expectation.That that = stated.expectation().that();
    if (that == null) {
      return stated.notJudged("it does not say what is expected");
    }
    return switch (that) {
      case FED -> FedOrDead.judge(stated, true);
      case DEAD -> FedOrDead.judge(stated, false);
      case ROUTES_APART -> RoutesApart.judge(stated);
      case JOINED -> JoinedOrApart.joined(stated);
      case APART -> JoinedOrApart.apart(stated);
      case FUSED_BY -> FusedBy.judge(stated);
      case LIGHTER_THAN -> LighterThan.judge(stated);
    };
  }
}
