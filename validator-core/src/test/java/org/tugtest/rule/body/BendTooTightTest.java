package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class BendTooTightTest {
  private static Judged judged(String radius, String... wires) {
    Loom loom = Loom.of(radius.isEmpty() ? "" : "\"bendRadiusMm\": " + radius);
    return (wires.length == 0 ? loom : loom.wired(wires)).judged(new BendTooTight());
  }

  @Test
  void tenTimesTheLargestWireIsEnough() {
    assertThat(judged("30").messages()).isEmpty();
    Judged tight = judged("29.9");
    assertThat(tight.messages())
        .containsExactly(
            "segment s1 bends to a radius of 29.9 mm; wire W1 of 3 mm, 10 times that, needs 30 mm");
    assertThat(tight.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(tight.findings().get(0).basis()).isEqualTo(Basis.SECONDARY);
  }

  @Test
  void aThickBundleNeedsTwiceItsDiameter() {
    // 8 wires of 3 mm: loose 1.3 * sqrt(72) = 11.03; of 60 wires 1.3 * sqrt(540) = 30.2
    String[] more = new String[59];
    for (int i = 0; i < more.length; i++) {
      more[i] = Loom.wire("V" + i, "A:v" + i, "B:v" + i, "w3");
    }
    Judged tight = judged("60.4", more);
    assertThat(tight.messages())
        .containsExactly(
            "segment s1 bends to a radius of 60.4 mm; its bundle of 30.2 mm, 2 times that, needs"
                + " 60.5 mm");
    assertThat(judged("60.5", more).messages()).isEmpty();
  }

  @Test
  void theLeastRadiusOfAPartGoesBeforeTheRuleOfThumb() {
    Judged fine = judged("60", Loom.wire("W2", "A:2", "B:2", "w10"));
    assertThat(fine.messages()).isEmpty();
    Judged tight = judged("59", Loom.wire("W2", "A:2", "B:2", "w10"));
    assertThat(tight.messages())
        .containsExactly(
            "segment s1 bends to a radius of 59 mm; wire W2, which gives minBendMm, needs 60 mm");
    assertThat(tight.findings().get(0).basis()).isEqualTo(Basis.GIVEN);
  }

  @Test
  void aJacketedCableUnderSixTimesItsDiameterIsAnError() {
    Loom loom =
        Loom.of("\"bendRadiusMm\": %s")
            .wired(Loom.wire("W2", "A:2", "B:2", "w2"))
            .with(
                "\"groups\": {\"G\": {\"kind\": \"cable\", \"wires\": [\"W1\", \"W2\"],"
                    + " \"outerMm\": 6}}");
    Judged error = Judged.of(new BendTooTight(), loom.json().formatted("35.9"));
    assertThat(error.messages())
        .containsExactly(
            "segment s1 bends to a radius of 35.9 mm; cable G of 6 mm, 6 times that, needs 36 mm");
    assertThat(error.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(error.findings().get(0).details())
        .containsExactly("cable G of 6 mm, 10 times that, would need 60 mm");
    Judged warning = Judged.of(new BendTooTight(), loom.json().formatted("36"));
    assertThat(warning.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(Judged.of(new BendTooTight(), loom.json().formatted("60")).messages()).isEmpty();
  }

  @Test
  void coveringsMakeTheBundleThicker() {
    Loom loom =
        new Loom(
            Loom.segment("s1", "a", "b", 1000, "\"bendRadiusMm\": 30, \"coverings\": [\"p12\"]"),
            Loom.wire("W1", "A:1", "B:1", "w2"),
            "");
    assertThat(loom.judged(new BendTooTight()).messages()).isEmpty();
    // the conduit is 14 mm outside: 28 mm
    Judged tight =
        new Loom(loom.segments().replace("30", "27"), loom.wires(), "").judged(new BendTooTight());
    assertThat(tight.messages())
        .containsExactly(
            "segment s1 bends to a radius of 27 mm; its bundle of 14 mm, 2 times that, needs 28"
                + " mm");
  }

  @Test
  void whatCannotBeJudgedSaysWhy() {
    assertThat(judged("").coverage().missing().keySet())
        .containsExactly("it gives no bendRadiusMm");
    assertThat(
            Loom.of("\"bendRadiusMm\": 30")
                .and(Loom.segment("s2", "b", "c", 10, "\"bendRadiusMm\": 1"))
                .judged(new BendTooTight())
                .coverage()
                .missing()
                .keySet())
        .containsExactly("no wire is routed along it");
    assertThat(
            judged("30", "\"W2\": {\"from\": \"A:2\", \"to\": \"B:2\"}")
                .coverage()
                .missing()
                .keySet())
        .containsExactly("a wire on it has no diameter");
  }
}
