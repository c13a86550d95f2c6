package org.tugtest.expect;

import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Expectation;

/** Judges what a team expects to stay true. Nothing is passed over: each has a verdict. */
public final class Expectations {
  private Expectations() {}

  /**
   * A verdict for every expectation, in natural order of the ids. They speak of volts, nets, fuses
   * and routes, none of which is computed yet, so each is {@link Verdict.Answer#NOT_JUDGED}.
   */
  public static List<Verdict> judge(Facts facts) {
    return facts.harness().expectations().values().stream()
        .map(expectation -> notJudged(facts, expectation))
        .toList();
  }

  private static Verdict notJudged(Facts facts, Expectation expectation) {
    Expectation.That that = expectation.that();
    return new Verdict(
        expectation.id(),
        Verdict.Answer.NOT_JUDGED,
        that == null
            ? "it does not say what is expected"
            : "this version of Tugtest does not judge \"" + that.word() + "\"",
        List.of(facts.places().of("expectations/" + expectation.id())));
  }
}
