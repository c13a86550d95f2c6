package org.tugtest.hook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;

class AheadTest {
  /** Were it read or solved in part only, what comes after would still have to be set up. */
  @Test
  void itsCircuitIsReadWholeAndCurrentFlows() {
    Facts facts = Ahead.facts();
    assertThat(facts.problems()).isEmpty();
    assertThat(facts.operating().in("on").orElseThrow().flows()).isTrue();
    assertThat(
            new Checker(RuleCatalog.standard(), Selection.ALL.from(Level.ERROR))
                .check(facts)
                .findings())
        .isEqualTo(List.of());
  }
}
