package org.tugtest.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random edits of odd looms: what is reported is what was done. */
class EditScriptTest {
  private static final int SEEDS = 3_000;

  @Test
  void reportedChangesAreTheEdits() {
    int edits = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Loom base = Loom.random(random, 6 + random.nextInt(30));
      Script script = new Script(base, random);
      script.steps(1 + random.nextInt(8));
      Comparison comparison = Loom.compare(base, script.loom);
      List<Said> reported = comparison.changes().stream().map(Said::of).toList();
      assertThat(reported).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(script.said);
      edits += script.said.size();
    }
    assertThat(edits).isGreaterThan(3 * SEEDS);
  }
}
