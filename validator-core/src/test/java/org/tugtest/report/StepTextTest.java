package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.bench.rework.Seat;
import org.tugtest.bench.rework.Step;
import org.tugtest.network.Point;

class StepTextTest {
  @Test
  void blanksOfOneConnectorAreOneLine() {
    List<Step> steps =
        List.of(
            blank("X1", "1"),
            blank("X1", "4"),
            blank("X1", "5"),
            blank("X2", "1"),
            step(Step.Kind.CLOSE, "X2", "X2: close it"),
            blank("X2", "2"));
    assertThat(StepText.lines(steps))
        .extracting(StepText.Line::text)
        .containsExactly(
            "X1: plug 1, 4 and 5 with blanks",
            "X2:1: plug it with a blank",
            "X2: close it",
            "X2:2: plug it with a blank");
  }

  @Test
  void takenOutAndPutInAreTwoThings() {
    Step out = taken("X1", "2");
    assertThat(StepText.lines(List.of(blank("X1", "1"), out, taken("X1", "3"))))
        .extracting(StepText.Line::text)
        .containsExactly("X1:1: plug it with a blank", "X1: take the blanks out of 2 and 3");
  }

  @Test
  void everyOtherStepStaysAsItIsWithItsRemarks() {
    Step step =
        new Step(
            Step.Kind.INSERT, "X1", List.of(), null, null, null, "X1:1: insert W1", List.of("a"));
    assertThat(StepText.lines(List.of(step, step)))
        .containsExactly(
            new StepText.Line("X1:1: insert W1", List.of("a")),
            new StepText.Line("X1:1: insert W1", List.of("a")));
    assertThat(StepText.lines(List.of())).isEmpty();
  }

  private static Step blank(String owner, String cavity) {
    return seated(Step.Kind.BLANK, owner, cavity, ": plug it with a blank");
  }

  private static Step taken(String owner, String cavity) {
    return seated(Step.Kind.UNBLANK, owner, cavity, ": take the blank out");
  }

  private static Step seated(Step.Kind kind, String owner, String cavity, String text) {
    Seat seat = new Seat(Point.Kind.CAVITY, owner, cavity, Seat.Stay.WANTED);
    return new Step(kind, owner, List.of(), seat, null, null, seat.text() + text, List.of());
  }

  private static Step step(Step.Kind kind, String at, String text) {
    return new Step(kind, at, List.of(), null, null, null, text, List.of());
  }
}
