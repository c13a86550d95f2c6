package org.tugtest.bench.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.report.html.SampleCar;

/** The table from the factors of the states against the one that solves every fault afresh. */
class UpdatedAgainstSolvedTest {
  @Test
  void theSample() {
    Facts facts = SampleCar.facts();
    WhatIfTable table = WhatIfTable.of(facts);
    assertThat(texts(table)).isEqualTo(texts(WhatIfTable.of(facts, true)));
    assertThat(table.again()).as("few faults need another solution").isLessThan(25);
  }

  @Test
  void randomVehicles() {
    int effects = 0;
    int again = 0;
    int solved = 0;
    for (int seed = 0; seed < 300; seed++) {
      Facts facts = new RandomVehicle(seed).facts();
      WhatIfTable table = WhatIfTable.of(facts);
      WhatIfTable full = WhatIfTable.of(facts, true);
      assertThat(texts(table)).as("seed %d", seed).isEqualTo(texts(full));
      effects += (int) table.effects().stream().filter(Effect::shows).count();
      again += table.again();
      solved += full.again();
    }
    assertThat(effects).as("faults that show").isGreaterThan(1500);
    assertThat(again).as("most are not solved again").isLessThan(solved / 3);
  }

  private static List<String> texts(WhatIfTable table) {
    List<String> texts = new ArrayList<>();
    for (Effect effect : table.effects()) {
      for (Effect.InState in : effect.states()) {
        texts.add(
            effect.fault().text()
                + ", "
                + in.state()
                + ": lost "
                + texts(in.lost())
                + " dim "
                + texts(in.dim())
                + " live "
                + texts(in.live()));
      }
    }
    return texts;
  }

  private static List<String> texts(List<Edge.OfElement> loads) {
    return loads.stream().map(Edge::text).toList();
  }
}
